/** Every relation of the calculation, by id, found in the folders of the subjects. Pages being built, tests and the worker of the scratch cells look here; no page in a browser does. */
import type { Relation } from './core/relation.ts';

const files = import.meta.glob<Record<string, unknown>>('./*/*.ts', { eager: true });

const isRelation = (value: unknown): value is Relation =>
  typeof value === 'object' && value !== null && 'expression' in value && 'compute' in value;

/** All relations by id. */
export const relations: ReadonlyMap<string, Relation> = new Map(
  Object.values(files)
    .flatMap((file) => Object.values(file).filter(isRelation))
    .map((found) => [found.id, found]),
);
