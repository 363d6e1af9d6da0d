/** The reason of a number, as it is fetched late: a file of its own, since rule pages have the reason from the start. */
export { Why } from './late/Why.tsx';
