/** Surface, finish, and the lid, which is fitted after the finish. */
import type { Amounts } from './amounts.ts';
import { cautionForPanel } from './panel-steps.ts';
import { fine, gap, panel, say, size, sizeOf } from './say.ts';
import type { Planned, Step } from './step.ts';

const volume = (value: number) => ({ value, kind: 'volume', digits: 1 }) as const;

export function surfaceSteps({ box, saw }: Planned, { finish }: Amounts): Step[] {
  return [
    ...(saw
      ? [
          {
            id: 'saw-lid',
            picture: 'saw lid' as const,
            does: say`Saw off the lid on the line at ${size(saw.from)}: long sides first, with spacers in the cut, a thin web left all around. Part the web with a knife and rub both edges flat on a plate.`,
            check: say`Lid and box meet without light before anything else is done.`,
            caution: 'sawnLid' as const,
          },
        ]
      : []),
    {
      id: 'level',
      picture: 'level',
      does: say`Wait for the glue’s water to leave, then plane or sand the corners flush, 120 to 220 grit with the grain. Break the edges by ${fine(0.5)}.`,
      check: say`No scratch under a lamp held low.`,
      caution: 'dust',
      ...(box.joint === 'finger' ? { rule: 'fingers-proud-or-flush' } : {}),
    },
    {
      id: 'finish',
      picture: 'finish',
      does: say`Finish the outside${
        box.kind === 'sliding' ? ', and the lid on both faces, without drying oil on its underside' : ''
      }: ${volume(finish.low)} to ${volume(finish.high)} for a coat over all faces. ${
        box.kind === 'sliding'
          ? 'No film in the lid’s grooves or on its edges: wax.'
          : 'Keep it thin where the lid fits.'
      }`,
      check: say`Dry as the label says before the lid is fitted.`,
      caution: 'rags',
    },
  ];
}

export function lidSteps(design: Planned): Step[] {
  const { box, lid, hinges, plan } = design;
  switch (box.kind) {
    case 'sliding':
      return lid
        ? [
            {
              id: 'fit-lid',
              picture: 'fit lid',
              does: say`After the finish is dry fit the lid: plane both edges equally to ${panel(lid.width)}. Wax the grooves.`,
              check: say`${gap(lid.playToday)} of play beside it at today’s air, both sides together. It runs by its own weight at 45°.`,
              caution: cautionForPanel(lid.material, lid.length, lid.tongue),
              rule: 'lid-clearance',
            },
            last(design),
          ]
        : [last(design)];
    case 'lift-off':
      return [
        ...linerStep(design),
        {
          id: 'liner',
          picture: 'liner',
          does: say`Fit the liner, its upper edges chamfered. After the finish is dry plane it above the rim until the lid slips over.`,
          check: say`${gap(box.lidRoom)} of room on each side, the lid turned either way.`,
          caution: 'chisel',
        },
        last(design),
      ];
    case 'sawn':
      return [
        ...(hinges
          ? [
              {
                id: 'hinges',
                picture: 'hinges' as const,
                does: say`Let in the hinges on the ${hinges.wall === 'right' ? 'right side' : 'back'}, one leaf length from each end. Pilot holes; a steel screw first, then brass. No screw longer than ${panel(plan.wall - 1)}.`,
                check: say`The lid closes without force and stops at 95 to 105°.`,
                caution: 'chisel' as const,
              },
            ]
          : []),
        last(design),
      ];
  }
}

/** The liner's strip, before it is mitered into its four pieces. */
function linerStep({ parts }: Planned): Step[] {
  const long = parts.find(({ name }) => name === 'liner-left');
  if (!long) return [];
  return [
    {
      id: 'liner-strip',
      picture: 'liner strip',
      does: say`Plane one long strip for the liner to ${sizeOf(long, 'thickness')} and rip it to ${sizeOf(long, 'width')}; only then miter its four pieces, to the box as it came out.`,
      check: say`Each piece springs into place without forcing the walls apart.`,
      caution: 'smallStock',
    },
  ];
}

const last = ({ box }: Planned): Step => ({
  id: 'last',
  picture: 'last',
  does: say`Write date, wood and humidity inside.`,
  check:
    box.kind === 'sliding'
      ? say`Measure the lid’s play and write it beside the number above.`
      : box.kind === 'sawn'
        ? say`The lid opens and shuts without sticking.`
        : say`The lid goes on and off without sticking.`,
  rule: 'write-the-humidity',
});
