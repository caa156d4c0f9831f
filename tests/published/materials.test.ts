/** The materials of the demo shop against the figures of the textbooks, and what follows from those figures. */
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { colourFringe } from '../../src/optics/chromatic.ts';
import { prenticePrism } from '../../src/optics/prism.ts';
import { reflectancePerSurface } from '../../src/optics/reflection.ts';
import { expectNear } from '../optics/near.ts';

const loaded = loadCatalogue('content');
if (!loaded.ok) throw new Error('The demo shop has faults: npm run check lists them.');
const { materials } = loaded.catalogue;

const minus6 = { sphereD: -6, cylinderD: 0, axisDeg: 180 };

// nd, ne, Abbe number, density, UV cut-off: from memory, after Jalie, and Fannin & Grosvenor. Reflectance of a face for
// nd, computed from ((n - 1)/(n + 1))²; colour fringe of -6.00 at 10 mm, 6/Abbe.
describe('a material', () => {
  it.each([
    ['standard-plastic', 1.498, 1.5, 58, 1.32, 355, 3.97, 0.103],
    ['urethane-1-53', 1.53, 1.533, 44, 1.11, 390, 4.39, 0.136],
    ['polycarbonate', 1.586, 1.59, 30, 1.2, 385, 5.14, 0.2],
    ['thiourethane-1-60', 1.594, 1.6, 41, 1.3, 390, 5.24, 0.146],
    ['thiourethane-1-67', 1.66, 1.67, 32, 1.36, 395, 6.16, 0.188],
    ['episulfide-1-74', 1.732, 1.74, 33, 1.47, 400, 7.18, 0.182],
  ])('%s has its figures', (id, nd, ne, abbe, densityGPerCm3, uvCutOffNm, facePercent, fringe) => {
    const material = materials.find((each) => each.id === id);
    expect(material).toMatchObject({ nd, ne, abbe, densityGPerCm3, uvCutOffNm });
    expectNear(100 * reflectancePerSurface(nd), facePercent, 0.006, '%');
    const seen = prenticePrism(minus6, { xMm: 10, yMm: 0 });
    expectNear(colourFringe(seen, abbe), fringe, 0.0006, 'prism dioptres');
  });
});
