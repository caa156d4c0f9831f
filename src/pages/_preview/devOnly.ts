/** Adds the owner's preview to the development server, and to nothing that is built. */
import type { AstroIntegration } from 'astro';

const PARTS = { '/preview': 'frames', '/preview/powers': 'powers', '/preview/options': 'options' } as const;

export function ownerPreview(): AstroIntegration {
  return {
    name: 'bevelbook-preview',
    hooks: {
      'astro:config:setup': ({ command, config, injectRoute }) => {
        if (command !== 'dev') return;
        for (const [pattern, part] of Object.entries(PARTS))
          injectRoute({ pattern, entrypoint: new URL(`src/pages/_preview/${part}.astro`, config.root) });
      },
    },
  };
}
