/** All that `npm run new` can make. */
import { coatingRecipe } from './coating.ts';
import { collectionRecipe } from './collection.ts';
import { colourwayRecipe } from './colourway.ts';
import { costsRecipe } from './costs.ts';
import { designRecipe } from './design.ts';
import { frameRecipe } from './frame.ts';
import { materialRecipe } from './material.ts';
import { outlineRecipe } from './outline.ts';
import { pageRecipe } from './page.ts';
import { promotionRecipe } from './promotion.ts';
import type { Recipe } from './recipe.ts';
import { sizeRecipe } from './size.ts';
import { tintRecipe } from './tint.ts';
import { translationRecipe } from './translation.ts';

/** In the order of the help. */
export const RECIPES: readonly Recipe[] = [
  frameRecipe,
  colourwayRecipe,
  sizeRecipe,
  outlineRecipe,
  collectionRecipe,
  designRecipe,
  materialRecipe,
  tintRecipe,
  coatingRecipe,
  promotionRecipe,
  pageRecipe,
  translationRecipe,
  costsRecipe,
];
