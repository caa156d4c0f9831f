/** The worksheet of a frame that the shopper already has. */
import { loadWhenNear } from '../loadWhenNear.ts';

loadWhenNear(() => import('./startOwnWorksheet.ts'));
