// Drawing in SVG: elements, scales, hatches, and places for labels so that none covers another.

const SVG = 'http://www.w3.org/2000/svg';

function shape(tag, attributes = {}, ...children) {
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) {
    made.setAttribute(name, typeof value === 'number' ? Number(value.toFixed(2)) : value);
  }
  made.append(...children);
  return made;
}

function label(x, y, words, attributes = {}) {
  return shape('text', { x, y, ...attributes }, words);
}

function line(x1, y1, x2, y2, name) {
  return shape('line', { x1, y1, x2, y2, class: name });
}

/** A line through points [x, y]; points without a place are gaps. */
function through(points, name) {
  let pen = 'M';
  let d = '';
  for (const [x, y] of points) {
    if (!isKnown(x) || !isKnown(y) || Number.isNaN(x + y)) {
      pen = 'M';
    } else {
      d += pen + x.toFixed(1) + ' ' + y.toFixed(1);
      pen = 'L';
    }
  }
  return shape('path', { d, class: name });
}

function scale(from, to, first, last) {
  const factor = (last - first) / (to - from);
  return (value) => (isKnown(value) ? first + (value - from) * factor : NaN);
}

/** The value of one column where another, which rises, has reached a value; null outside of it. */
function columnAt(rising, value, other) {
  if (!isKnown(value) || value < rising[0] || value > rising[rising.length - 1]) return null;
  const above = rising.findIndex((reached) => reached >= value);
  if (above === 0 || rising[above] === value) return other[above];
  const part = (value - rising[above - 1]) / (rising[above] - rising[above - 1]);
  return other[above - 1] + part * (other[above] - other[above - 1]);
}

/** Round values up to an end, as dense as their places stay that many pixels apart. */
function ticks(end, placeOf, apart, steps = [1, 2, 5, 10, 20, 50, 100, 200]) {
  for (const step of steps) {
    const values = [];
    for (let value = 0; value <= end; value += step) values.push(value);
    const places = values.map(placeOf);
    if (places.every((place, i) => i === 0 || place - places[i - 1] >= apart)) return values;
  }
  return [0];
}

/** A pattern of parallel strokes; distance and angle tell one from another, also in grey. */
function hatch(id, apart, angle, width = 1.2, dash = '') {
  return shape('pattern',
    { id, width: apart, height: apart, patternUnits: 'userSpaceOnUse', patternTransform: `rotate(${angle})` },
    shape('line', { x1: apart / 2, y1: 0, x2: apart / 2, y2: apart, class: 'hatch', 'stroke-width': width,
      ...(dash ? { 'stroke-dasharray': dash } : {}) }));
}

const pen = document.createElement('canvas').getContext('2d');

function textWidth(words, size, weight = 400) {
  pen.font = `${weight} ${size}px system-ui, sans-serif`;
  return pen.measureText(words).width * 1.04 + 1;
}

/** Moves heights apart until neighbours keep their distance, and all between two bounds. */
function spread(heights, apart, low, high) {
  const order = heights.map((height, i) => [height, i]).sort((a, b) => a[0] - b[0]);
  const places = [];
  let least = low;
  for (const [height, i] of order) {
    places[i] = Math.max(height, least);
    least = places[i] + apart;
  }
  let most = high;
  for (const [, i] of order.reverse()) {
    places[i] = Math.min(places[i], most);
    most = places[i] - apart;
  }
  return places;
}

/** Remembers what is taken, and finds the nearest free place for the next label. */
class Room {
  constructor(left, top, right, bottom) {
    this.bounds = [left, top, right, bottom];
    this.taken = [];
    this.leaders = [];
    this.labels = [];
    this.across = [];
  }

  take(left, top, right, bottom) {
    this.taken.push([left, top, right, bottom]);
  }

  takeAlong(points, half) {
    for (let i = 1; i < points.length; i++) {
      const [x1, y1] = points[i - 1];
      const [x2, y2] = points[i];
      const parts = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / half));
      for (let k = 0; k <= parts; k++) {
        const x = x1 + ((x2 - x1) * k) / parts;
        const y = y1 + ((y2 - y1) * k) / parts;
        this.take(x - half, y - half, x + half, y + half);
      }
    }
  }

  /** Finds a free box near a point and takes it; above the point where there is none. */
  place(x, y, width, height, degrees, nearest = 16, isBare = false) {
    const found = this.find(x, y, width, height, degrees, nearest, isBare) || { x, y: y - 30 };
    this.keep(x, y, found, width, height);
    return found;
  }

  /** The middle of a free box of that size near a point, looking towards some directions first; bare words keep off lines across. */
  find(x, y, width, height, degrees, nearest, isBare) {
    let best = null;
    for (let away = nearest; away <= 320; away += 6) {
      degrees.forEach((degree, preference) => {
        const cost = away + preference * 4;
        if (best && cost >= best.cost) return;
        const angle = (degree * Math.PI) / 180;
        const cx = x + Math.cos(angle) * (away + width / 2);
        const cy = y + Math.sin(angle) * (away + height / 2);
        const free = this.isFree(cx - width / 2, cy - height / 2, cx + width / 2, cy + height / 2);
        if (!free) return;
        const box = [cx - width / 2, cy - height / 2, cx + width / 2, cy + height / 2];
        const untidy = this.leaders.filter((other) => cross(other, [x, y, cx, cy])).length * 40
          + this.labels.filter((other) => passes([x, y, cx, cy], other)).length * 80
          + this.leaders.filter((other) => passes(other, box)).length * 60
          + (isBare ? this.across.filter((level) => level > box[1] && level < box[3]).length * 50 : 0);
        if (!best || cost + untidy < best.cost) best = { cost: cost + untidy, x: cx, y: cy };
      });
    }
    return best;
  }

  keep(x, y, found, width, height) {
    const box = [found.x - width / 2 - 2, found.y - height / 2 - 2, found.x + width / 2 + 2, found.y + height / 2 + 2];
    this.take(...box);
    this.labels.push(box);
    this.leaders.push([x, y, found.x, found.y]);
  }

  isFree(left, top, right, bottom) {
    const [l, t, r, b] = this.bounds;
    if (left < l || top < t || right > r || bottom > b) return false;
    return this.taken.every((box) => right < box[0] || left > box[2] || bottom < box[1] || top > box[3]);
  }
}

/** Whether a line goes through a box. */
function passes([ax, ay, bx, by], [left, top, right, bottom]) {
  const parts = Math.ceil(Math.hypot(bx - ax, by - ay) / 4);
  for (let k = 0; k <= parts; k++) {
    const [x, y] = [ax + ((bx - ax) * k) / parts, ay + ((by - ay) * k) / parts];
    if (x > left && x < right && y > top && y < bottom) return true;
  }
  return false;
}

function cross([ax, ay, bx, by], [cx, cy, dx, dy]) {
  const side = (px, py, qx, qy, rx, ry) => Math.sign((qx - px) * (ry - py) - (qy - py) * (rx - px));
  return side(ax, ay, bx, by, cx, cy) * side(ax, ay, bx, by, dx, dy) < 0
    && side(cx, cy, dx, dy, ax, ay) * side(cx, cy, dx, dy, bx, by) < 0;
}
