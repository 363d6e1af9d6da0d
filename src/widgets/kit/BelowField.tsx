/** Below a number field: what is wrong with it or its text, and help; the field is described by both, `…m` and `…h`. */
interface Props {
  /** Of the field. */
  id: string;
  message: string | undefined;
  /** Whether the message came with what the reader did here. */
  isNew: boolean;
  help: string | false | undefined;
}

export const BelowField = ({ id, message, isNew, help }: Props) => (
  <>
    {message && (
      <p class="message" id={`${id}m`} role={isNew ? 'alert' : undefined}>
        {message}
      </p>
    )}
    {help && (
      <p class="help" id={`${id}h`}>
        {help}
      </p>
    )}
  </>
);
