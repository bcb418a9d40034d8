/** Room for so many ends with their levels; those that were noted are taken over. */
export function roomFor(count: number, ends?: Float64Array, levels?: Int32Array): [Float64Array, Int32Array] {
  const room: [Float64Array, Int32Array] = [new Float64Array(count), new Int32Array(count)];
  if (ends) room[0].set(ends);
  if (levels) room[1].set(levels);
  return room;
}
