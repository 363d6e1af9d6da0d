/** The questions that are asked again and the names of places, fetched with the first use. */

export interface Question {
  /** See `questionId`. */
  readonly id: string;
  /** The lesson it is from: its address, its place in the course, its title. */
  readonly lesson: string;
  readonly order: number;
  readonly title: string;
  readonly ask: string;
  readonly options: readonly string[];
  /** Index of the right option. */
  readonly right: number;
  /** Said after either. */
  readonly because: string;
}

export interface NotebookWords {
  readonly questions: readonly Question[];
  /** What a place of a note is called, in the order of the course. */
  readonly places: Readonly<Record<string, string>>;
}

/** Fetches them from the page's own version. */
export const fetchWords = async (file: string): Promise<NotebookWords> => {
  const answer = await fetch(file);
  if (!answer.ok) throw new Error(answer.statusText);
  return answer.json();
};
