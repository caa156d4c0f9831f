/** The folders of src/ and which others each may import, as DEVELOPERS.md draws them. */

/** Numbers and rules without a clock, chance, disk or screen. */
export const pureFolders = ['optics', 'money', 'rules', 'pricing'] as const;

/** All that runs the same in the browser, at build time and on the command line. */
export const coreFolders = [...pureFolders, 'catalogue', 'quote', 'order', 'workroom'] as const;

const engine = ['optics', 'money', 'catalogue', 'rules', 'pricing', 'quote'];
const shown = [...engine, 'workroom', 'components', 'styles'];

/** Folder by folder, what it may import besides itself. */
export const mayImport: Readonly<Record<string, readonly string[]>> = {
  optics: [],
  money: [],
  catalogue: ['optics', 'money'],
  rules: ['optics', 'money', 'catalogue'],
  pricing: ['optics', 'money', 'catalogue'],
  quote: ['optics', 'money', 'catalogue', 'rules', 'pricing'],
  order: engine,
  workroom: [...engine, 'order'],
  configurator: engine,
  components: [...engine, 'workroom', 'styles'],
  islands: [...shown, 'configurator'],
  publishing: [...engine, 'components'],
  layouts: [...shown, 'islands', 'publishing'],
  pages: [...shown, 'islands', 'layouts', 'order', 'configurator', 'publishing'],
  commands: [...engine, 'order', 'workroom', 'configurator'],
  styles: [],
};

/** What a folder may import besides, but only by `import()`: it is heavy and few visitors need it. */
export const mayImportLater: Readonly<Record<string, readonly string[]>> = {
  configurator: ['order'],
  islands: ['order'],
};
