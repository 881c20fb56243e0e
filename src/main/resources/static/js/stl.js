// Reads binary STL: 80-byte header, facet count, then 50 bytes a facet, little endian.
const HEADER = 84;
const FACET = 50;

/** Nine coordinates a facet, in mm. Throws where the bytes are no binary STL. */
export function readBinaryStl(buffer) {
  const view = new DataView(buffer);
  if (buffer.byteLength < HEADER) throw new Error('too short for STL');
  const count = view.getUint32(80, true);
  if (buffer.byteLength !== HEADER + count * FACET) throw new Error('length does not fit the number of facets');
  const positions = new Float32Array(count * 9);
  for (let facet = 0; facet < count; facet++) {
    for (let i = 0; i < 9; i++) {
      positions[facet * 9 + i] = view.getFloat32(HEADER + facet * FACET + 12 + i * 4, true);
    }
  }
  return positions;
}
