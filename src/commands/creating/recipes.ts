/** All that `npm run new` can make. */
import { coatingRecipe } from './coating.ts';
import { colourwayRecipe } from './colourway.ts';
import { designRecipe } from './design.ts';
import { frameRecipe } from './frame.ts';
import { materialRecipe } from './material.ts';
import { pageRecipe } from './page.ts';
import { promotionRecipe } from './promotion.ts';
import type { Recipe } from './recipe.ts';
import { tintRecipe } from './tint.ts';

/** In the order of the help. */
export const RECIPES: readonly Recipe[] = [
  frameRecipe,
  colourwayRecipe,
  designRecipe,
  materialRecipe,
  tintRecipe,
  coatingRecipe,
  promotionRecipe,
  pageRecipe,
];
