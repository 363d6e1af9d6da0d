/** Which step a slip or a wrong choice went wrong at, once for a class: a letter in the table of keys, and the words below. */

/** A slip, or a wrong choice: its letter, and which step went wrong, in as many ways as it is said in this class. */
export interface KeyNote {
  readonly letter: string;
  /** For a choice what is asked and what is chosen; else empty. */
  readonly asked: string;
  readonly chosen: string;
  readonly says: readonly string[];
}

/** Letters of slips: A to Z, then A1. */
const letterAt = (at: number) => String.fromCharCode(65 + (at % 26)) + (at < 26 ? '' : Math.floor(at / 26));
/** Letter of the choice at this place: (a), (b). */
export const choiceAt = (at: number): string => `(${String.fromCharCode(97 + at)})`;

/** Collects the words of slips under letters; the same slip of two things asked shares one. */
export class Notes {
  private readonly found = new Map<
    string,
    { letter: string; asked: string; chosen: string; says: Set<string> }
  >();
  private letters = 0;

  /** The letter of a slip; the words come to it. */
  slip(id: string, says: readonly string[]): string {
    const name = `${id} ${says[0]}`;
    const known = this.found.get(name);
    const note = known ?? {
      letter: letterAt(this.letters++),
      asked: '',
      chosen: '',
      says: new Set<string>(),
    };
    for (const one of says) note.says.add(one);
    this.found.set(name, note);
    return note.letter;
  }

  choice(asked: string, letter: string, chosen: string, says: string | undefined): void {
    const name = `choice ${asked} ${letter} ${chosen}`;
    const note = this.found.get(name) ?? { letter, asked, chosen, says: new Set<string>() };
    if (says) note.says.add(says);
    this.found.set(name, note);
  }

  get all(): KeyNote[] {
    return [...this.found.values()].map((note) => ({ ...note, says: [...note.says] }));
  }
}
