/** Vectors of three numbers for ray tracing: x to the viewer's right, y up, z from the lens towards the eye. */
export type Vec3 = readonly [number, number, number];

/** Dot product. */
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** a + s b. */
export const along = (a: Vec3, s: number, b: Vec3): Vec3 => [
  a[0] + s * b[0],
  a[1] + s * b[1],
  a[2] + s * b[2],
];

/** The vector at length 1. */
export function unit(a: Vec3): Vec3 {
  const length = Math.sqrt(dot(a, a));
  return [a[0] / length, a[1] / length, a[2] / length];
}

/** Three orthonormal directions: the axes of a turned frame in the frame that holds it. */
export interface Axes {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
}

/** Components given along the axes, as a vector of the frame that holds them. */
export const fromAxes = (axes: Axes, v: Vec3): Vec3 =>
  along(along(along([0, 0, 0], v[0], axes.x), v[1], axes.y), v[2], axes.z);

/** Components along the axes of a vector of the frame that holds them. */
export const toAxes = (axes: Axes, v: Vec3): Vec3 => [dot(axes.x, v), dot(axes.y, v), dot(axes.z, v)];

/**
 * The frame turned by the smallest rotation that takes +z to the unit vector `z`: no roll (for an eye this is
 * Listing's law). `z` must not be -z itself.
 */
export function leastTurn(z: Vec3): Axes {
  const [dx, dy, dz] = z;
  const k = 1 / (1 + dz);
  return { x: [1 - dx * dx * k, -dx * dy * k, -dx], y: [-dx * dy * k, 1 - dy * dy * k, -dy], z };
}
