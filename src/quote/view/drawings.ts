/** All that the drawings of a pair are made from: plain data, computed beside the engine and sent to the page. */
import type { Situation } from '../../rules/situation.ts';
import { type EdgeView, edgeView } from './edge.ts';
import { type FrontView, frontView } from './front.ts';
import { type GazeView, gazeView } from './gaze.ts';
import { type LightView, lightView } from './light.ts';
import { type SectionView, sectionView } from './section.ts';

export interface DrawingsView {
  readonly front: FrontView;
  /** null: no lens could be computed. */
  readonly section: SectionView | null;
  readonly edge: EdgeView | null;
  readonly gaze: GazeView;
  readonly light: LightView;
}

/** The drawings of a package, its sections laid over those of another where one is given. Lengths in mm. */
export function drawingsView(situation: Situation, other: Situation | null = null): DrawingsView {
  return {
    front: frontView(situation),
    section: sectionView(situation, other),
    edge: edgeView(situation),
    gaze: gazeView(situation),
    light: lightView(situation),
  };
}
