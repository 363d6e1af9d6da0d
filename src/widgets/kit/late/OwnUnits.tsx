/** A sentence in which each pair of native values, "6 mm (1/4 in)", is shown to each reader as their own. */
import { withPairs } from '../../../units/late/pairs.ts';

export const OwnUnits = ({ of }: { of: string }) => (
  <>
    {withPairs(of).map((piece) =>
      typeof piece === 'string' ? (
        piece
      ) : (
        <>
          <span class="mm">{piece.mm}</span>
          <span class="inch">{piece.inch}</span>
        </>
      ),
    )}
  </>
);
