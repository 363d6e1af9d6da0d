/** What the things in the list do to the size of the box, in words: who decides it, and what it comes to. */
import { type ReadonlySignal, useComputed } from '@preact/signals';
import { fitsBlock, isLaid, waysToLie, whyNoWay } from '../../box/design/ways-to-lie.ts';
import type { Values } from '../../box/whole/index.ts';
import { Sizes } from '../../figures/parts/Sizes.tsx';

/** `of`: the box, as far as the drawings follow it: to search for ways to lie takes longer than a frame. */
export function SizeOfContents({ of }: { of: ReadonlySignal<Values> }) {
  const state = useComputed(() => {
    const box = of.value;
    if (box.items.length === 0) return 'empty';
    const ways = waysToLie(box);
    if (ways.length === 0) return 'too large';
    if (box.sizeFrom !== 'contents') return 'given';
    if (ways.some((way) => isLaid(box, way))) return 'laid';
    return fitsBlock(box) ? 'own' : 'own, too small';
  }).value;
  const v = of.value;
  const inside = <Sizes of={[v.insideLength, v.insideWidth, v.insideHeight]} between=" by " />;
  const block = <Sizes of={[v.contentsLength, v.contentsWidth, v.contentsHeight]} between=" by " asTyped />;
  if (state === 'too large')
    return (
      <p class="message" role="status">
        {whyNoWay(v)}
      </p>
    );
  return (
    <p class="size-of-contents" role="status">
      {state === 'empty' && 'Nothing goes in yet: the size stays as you set it.'}
      {state === 'given' &&
        'You gave the size of the box, so these things do not change it; they fit into it.'}
      {state === 'laid' && <>The size comes from these things: they lie in {block}.</>}
      {state === 'own' && (
        <>You set the size of the contents yourself, {block}: it stays while these things fit into it.</>
      )}
      {state === 'own, too small' && (
        <>
          You set the size of the contents yourself, {block}: these things do not fit into it. Lay them one of
          the ways below, or set it larger.
        </>
      )}{' '}
      The inside is {inside}.
    </p>
  );
}
