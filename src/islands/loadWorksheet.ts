/** The worksheet of a frame of the shop. */
import { loadWhenNear } from './loadWhenNear.ts';

loadWhenNear(() => import('./startWorksheet.ts'));
