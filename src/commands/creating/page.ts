/** `npm run new -- page` */
import { fileRecipe } from './fileRecipe.ts';
import { numeric, orNone } from './recipe.ts';

/** A page of prose. */
export const pageRecipe = fileRecipe({
  kind: 'page',
  folder: 'pages',
  says: 'a page of prose',
  questions: [
    { name: 'title', asks: 'Title', field: ['title'] },
    { name: 'description', asks: 'One sentence for search results', field: ['description'] },
    {
      name: 'menu',
      asks: 'Place in the menu, from 1; nothing keeps it out of the menu',
      field: ['menu'],
      suggest: () => '',
    },
    { name: 'text', asks: 'Its first paragraph' },
  ],
  value: ({ title, description, menu }) => ({
    title,
    description,
    menu: orNone(menu) === null ? null : numeric(menu),
  }),
  body: ({ text }) => text ?? '',
  next: ({ id }) => [
    'Go on writing below the second line ---, in Markdown.',
    `npm run dev shows it at /${id}/`,
  ],
});
