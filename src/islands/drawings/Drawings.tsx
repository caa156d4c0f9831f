/** All drawings of a pair. Loaded on demand; each draws its part of a view and computes nothing of optics. */
import type { DrawingsView } from '../../quote/view/drawings.ts';
import { EdgeDrawing } from './EdgeDrawing.tsx';
import { FrontDrawing } from './FrontDrawing.tsx';
import { GazeDrawing } from './GazeDrawing.tsx';
import { LightDrawing } from './LightDrawing.tsx';
import { SectionDrawing } from './SectionDrawing.tsx';
import { teller, type Words } from './tell.ts';

interface Props {
  readonly view: DrawingsView;
  /** Words of the worksheet; keys without their leading `worksheet.`. */
  readonly t: Words;
  readonly language: string;
  /** Start of every id: once a page. */
  readonly uid: string;
  /** Name of the package whose sections are laid under these; null: none. */
  readonly comparedAs: string | null;
}

export function Drawings({ view, t, language, uid, comparedAs }: Props) {
  const tell = teller(t, language);
  return (
    <div class="dw-drawings">
      <FrontDrawing view={view.front} tell={tell} uid={`${uid}-front`} />
      {view.section ? (
        <SectionDrawing view={view.section} tell={tell} uid={`${uid}-section`} comparedAs={comparedAs} />
      ) : (
        <p class="dw-note">{tell.d('noLens')}</p>
      )}
      {view.edge && <EdgeDrawing view={view.edge} tell={tell} uid={`${uid}-edge`} />}
      <GazeDrawing view={view.gaze} tell={tell} uid={`${uid}-gaze`} />
      <LightDrawing view={view.light} tell={tell} uid={`${uid}-light`} />
    </div>
  );
}
