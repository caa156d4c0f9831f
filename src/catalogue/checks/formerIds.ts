/** Ids that frames had before, and the days that frames tell. */
import { type AuthoredFrame, type Check, type Content, faultsOf, type Sound, sound } from '../content.ts';
import type { ContentFault, FaultDetail } from '../fault.ts';
import { faultAt } from '../reading/entry.ts';

function taken(received: string, hint: string): FaultDetail {
  return { code: 'duplicate-id', expected: 'an id that no other frame has or had', received, hint };
}

function idFaults({ frames }: Content): ContentFault[] {
  const living = new Set(frames.map(({ id }) => id));
  const claimed = new Map<string, string>();
  const faults: ContentFault[] = [];
  for (const { id, origin, value } of sound(frames)) {
    for (const [index, former] of value.formerIds.entries()) {
      const first = claimed.get(former);
      const add = (detail: FaultDetail) => faults.push(faultAt(origin, ['formerIds', index], detail));
      if (former === id) add(taken(`"${former}", its own id`, 'Remove it: the file is still called that.'));
      else if (living.has(former)) {
        const hint = `Remove it, or rename the file frames/${former}.md if that frame is gone.`;
        add(taken(`"${former}", which is a frame of the shop`, hint));
      } else if (first !== undefined) {
        add(
          taken(
            `"${former}", which ${first} claims as well`,
            'Leave it to the frame that was called so last.',
          ),
        );
      }
      if (first === undefined) claimed.set(former, `frames/${id}`);
    }
  }
  return faults;
}

function dayFault({ origin, value: { added, changed } }: Sound<AuthoredFrame>): ContentFault[] {
  if (added === null || changed === null || added <= changed) return [];
  const detail: FaultDetail = {
    code: 'parts-disagree',
    expected: `a day from ${added} on, when the frame was added`,
    received: changed,
    hint: 'Exchange added and changed, or mend the year.',
  };
  return [faultAt(origin, ['changed'], detail)];
}

/** Former ids that are in use or claimed twice; changes before a frame was there. */
export const checkFormerIds: Check = (content) => [
  ...idFaults(content),
  ...faultsOf(content.frames, dayFault),
];
