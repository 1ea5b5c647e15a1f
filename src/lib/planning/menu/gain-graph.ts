/** Room or gain below this is none. */
const NO_ROOM = 1e-7;
const NO_GAIN = 1e-12;

/**
 * A small graph whose arcs have a room and a gain per unit of flow, used again and again without new memory. Arcs come in pairs, the odd one being the way back.
 * The flow that gains most is found by successive shortest paths (Ahuja, Magnanti & Orlin, Network Flows, 1993, ch. 9).
 */
export class GainGraph {
  #nodes = 0;
  #arcs = 0;
  #first = new Int32Array(64);
  #best = new Float64Array(64);
  #by = new Int32Array(64);
  #queued = new Uint8Array(64);
  #queue = new Int32Array(64);
  #next = new Int32Array(256);
  #to = new Int32Array(256);
  #room = new Float64Array(256);
  #gain = new Float64Array(256);

  /** Empties the graph and gives it so many nodes. */
  reset(nodes: number): void {
    if (nodes > this.#first.length) {
      this.#first = new Int32Array(2 * nodes);
      this.#best = new Float64Array(2 * nodes);
      this.#by = new Int32Array(2 * nodes);
      this.#queued = new Uint8Array(2 * nodes);
      this.#queue = new Int32Array(2 * nodes);
    }
    this.#nodes = nodes;
    this.#arcs = 0;
    this.#first.fill(-1, 0, nodes);
  }

  /** @returns the arc, to ask for its flow */
  addArc(from: number, to: number, room: number, gain: number): number {
    if (this.#arcs + 2 > this.#to.length) {
      this.#next = doubled(this.#next, Int32Array);
      this.#to = doubled(this.#to, Int32Array);
      this.#room = doubled(this.#room, Float64Array);
      this.#gain = doubled(this.#gain, Float64Array);
    }
    const arc = this.#arcs;
    this.#half(from, to, room, gain);
    this.#half(to, from, 0, -gain);
    return arc;
  }

  #half(from: number, to: number, room: number, gain: number): void {
    const arc = this.#arcs++;
    this.#to[arc] = to;
    this.#room[arc] = room;
    this.#gain[arc] = gain;
    this.#next[arc] = this.#first[from] as number;
    this.#first[from] = arc;
  }

  flow(arc: number): number {
    return this.#room[arc ^ 1] as number;
  }

  /** Raises the flow from source to sink along the path of most gain, as long as one gains. @returns the gain in all */
  raise(source: number, sink: number): number {
    const [best, by, queued, queue] = [this.#best, this.#by, this.#queued, this.#queue];
    const size = queue.length;
    let gained = 0;
    for (;;) {
      best.fill(-Infinity, 0, this.#nodes);
      queued.fill(0, 0, this.#nodes);
      best[source] = 0;
      by[source] = -1;
      let head = 0;
      let tail = 0;
      queue[tail++] = source;
      while (head !== tail) {
        const node = queue[head] as number;
        head = head + 1 === size ? 0 : head + 1;
        queued[node] = 0;
        const soFar = best[node] as number;
        for (let arc = this.#first[node] as number; arc >= 0; arc = this.#next[arc] as number) {
          if ((this.#room[arc] as number) <= NO_ROOM) continue;
          const to = this.#to[arc] as number;
          const gain = soFar + (this.#gain[arc] as number);
          if (gain <= (best[to] as number) + NO_GAIN) continue;
          best[to] = gain;
          by[to] = arc;
          if (queued[to] === 0) {
            queued[to] = 1;
            queue[tail] = to;
            tail = tail + 1 === size ? 0 : tail + 1;
          }
        }
      }
      const gain = best[sink] as number;
      if (!(gain > NO_GAIN)) return gained;
      let room = Infinity;
      for (let arc = by[sink] as number; arc >= 0; arc = by[this.#to[arc ^ 1] as number] as number)
        room = Math.min(room, this.#room[arc] as number);
      for (let arc = by[sink] as number; arc >= 0; arc = by[this.#to[arc ^ 1] as number] as number) {
        this.#room[arc] = (this.#room[arc] as number) - room;
        this.#room[arc ^ 1] = (this.#room[arc ^ 1] as number) + room;
      }
      gained += gain * room;
    }
  }
}

function doubled<T extends Int32Array | Float64Array>(old: T, Kind: new (size: number) => T): T {
  const grown = new Kind(old.length * 2);
  grown.set(old);
  return grown;
}
