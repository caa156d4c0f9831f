/**
 * Surface powers and radii of a thick lens: which back surface gives the ordered back vertex power behind a given
 * front (BVP = F1 / (1 - (t/n) F1) + F2 in each principal meridian), and which tilt of it gives an ordered prism.
 */
import type { BackSurface, PrismVector, SpheroCylinder } from './types.ts';

/** Radius in mm of a surface of `powerD` dioptres; positive for positive power, Infinity for 0. r = 1000 (n - 1)/F. */
export function radiusOfPower(powerD: number, index: number): number {
  return powerD === 0 ? Number.POSITIVE_INFINITY : (1000 * (index - 1)) / powerD;
}

/** Power in D of a surface of radius `radiusMm`, signed as the radius is. */
export function powerOfRadius(radiusMm: number, index: number): number {
  return (1000 * (index - 1)) / radiusMm;
}

/** What the front gives at the back vertex, D: F1 / (1 - (t/n) F1), with t in m. */
export function frontVergenceD(frontPowerD: number, thicknessMm: number, index: number): number {
  return frontPowerD / (1 - ((thicknessMm / 1000) * frontPowerD) / index);
}

/** Back vertex power in D of a thick lens with surface powers in D. */
export function backVertexPower(lens: {
  readonly frontPowerD: number;
  readonly backPowerD: number;
  readonly thicknessMm: number;
  readonly index: number;
}): number {
  return frontVergenceD(lens.frontPowerD, lens.thicknessMm, lens.index) + lens.backPowerD;
}

/** Front vertex power in D: F2 / (1 - (t/n) F2) + F1; what a lens-meter reads with the lens turned round. */
export function frontVertexPower(lens: {
  readonly frontPowerD: number;
  readonly backPowerD: number;
  readonly thicknessMm: number;
  readonly index: number;
}): number {
  return frontVergenceD(lens.backPowerD, lens.thicknessMm, lens.index) + lens.frontPowerD;
}

/**
 * Slope of the back surface at its vertex for an ordered prism (prism dioptres, towards the base): a ray normal
 * to the front meets the back at the angle e, leaves at asin(n sin e), and so deviates by d = atan(P/100) when
 * tan e = sin d / (n - cos d). The lens is thicker towards the base.
 */
export function tiltForPrism(prism: PrismVector, index: number): { slopeX: number; slopeY: number } {
  const amount = Math.hypot(prism.x, prism.y);
  if (amount === 0) return { slopeX: 0, slopeY: 0 };
  const deviation = Math.atan(amount / 100);
  const slope = Math.sin(deviation) / (index - Math.cos(deviation));
  return { slopeX: (slope * prism.x) / amount, slopeY: (slope * prism.y) / amount };
}

/** The inverse of `tiltForPrism`: prism in prism dioptres of a vertex slope. */
export function prismOfTilt(slopeX: number, slopeY: number, index: number): PrismVector {
  const slope = Math.hypot(slopeX, slopeY);
  if (slope === 0) return { x: 0, y: 0 };
  const e = Math.atan(slope);
  const amount = 100 * Math.tan(Math.asin(index * Math.sin(e)) - e);
  return { x: (amount * slopeX) / slope, y: (amount * slopeY) / slope };
}

/** What fixes a back surface: the order, the front and the thickness between them. */
export interface BackOrder {
  readonly power: SpheroCylinder;
  readonly prism: PrismVector;
  readonly index: number;
  readonly frontPowerD: number;
}

/** The back surface that gives the ordered power and prism behind the front at this centre thickness (mm). */
export function backFor(order: BackOrder, thicknessMm: number): BackSurface {
  const { power, index } = order;
  const front = frontVergenceD(order.frontPowerD, thicknessMm, index);
  const alongAxisD = power.sphereD - front;
  const acrossAxisD = power.sphereD + power.cylinderD - front;
  const tilt = tiltForPrism(order.prism, index);
  const acrossSteeper = Math.abs(acrossAxisD) > Math.abs(alongAxisD);
  const steeperD = acrossSteeper ? acrossAxisD : alongAxisD;
  const flatterD = acrossSteeper ? alongAxisD : acrossAxisD;
  // A hollow back has negative power and a positive radius (types.ts). 0 is kept from becoming minus Infinity.
  const radius = (powerD: number) =>
    powerD === 0 ? Number.POSITIVE_INFINITY : -radiusOfPower(powerD, index);
  return {
    generatingRadiusMm: radius(steeperD),
    revolvedRadiusMm: radius(flatterD),
    generatingMeridianDeg: (((power.axisDeg + (acrossSteeper ? 90 : 0)) % 180) + 180) % 180,
    tiltSlopeX: tilt.slopeX,
    tiltSlopeY: tilt.slopeY,
  };
}
