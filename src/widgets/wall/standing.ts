/**
 * How a figure stands: where its sliders and choices are, in their order on the page. Read and set through the controls
 * themselves, so that every figure can be brought back, or brought to a phone, whatever it keeps its values in.
 */

/** A choice by its value; a slider by its share of the way, since its steps follow the reader's units. */
export type Standing = readonly string[];

type Movable = HTMLInputElement | HTMLSelectElement;
const movable = (figure: Element): readonly Movable[] => [
  ...figure.querySelectorAll<Movable>('.control select, .control input[type=range]'),
];

const shareOf = ({ value, min, max }: HTMLInputElement) =>
  ((Number(value) - Number(min)) / (Number(max) - Number(min) || 1)).toFixed(4);
const read = (control: Movable) => (control instanceof HTMLSelectElement ? control.value : shareOf(control));

export const standingOf = (figure: Element): Standing => movable(figure).map(read);

const frame = () => new Promise((done) => setTimeout(done, 60));

/** Brings a figure back to how it stood. A choice may bring other sliders, so it takes a few rounds. */
export async function setStanding(figure: Element, standing: Standing): Promise<void> {
  for (let round = 0; round < 4; round++) {
    const controls = movable(figure);
    const wrong = controls.findIndex(
      (control, at) => standing[at] !== undefined && read(control) !== standing[at],
    );
    if (wrong < 0) return;
    for (const [at, control] of controls.entries()) {
      const wanted = standing[at];
      if (wanted === undefined || read(control) === wanted) continue;
      if (control instanceof HTMLSelectElement) {
        if (![...control.options].some(({ value }) => value === wanted)) continue;
        control.value = wanted;
      } else {
        const share = Number(wanted);
        if (!(share >= 0 && share <= 1)) continue;
        control.value = String(
          Math.round(Number(control.min) + share * (Number(control.max) - Number(control.min))),
        );
      }
      for (const type of ['input', 'change']) control.dispatchEvent(new Event(type, { bubbles: true }));
    }
    await frame();
  }
}
