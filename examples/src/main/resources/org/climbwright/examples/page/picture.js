// The picture: altitude against distance or time, with what lies along the climb. Only scaling happens here.

const AXIS_LEFT = 100;
const AXIS_TOP = 40;
const AXIS_BOTTOM = 40;
const STRIP = 62;

// degrees from the right, clockwise, the best first: numbers above the climb, names below it
const NUMBERS_TOWARDS = [225, 240, 210, 255, 195, 270, 45, 30, 60, 15, 75, 0, 90, 180, 285];
const GATE_NAMES_TOWARDS = [30, 10, 60, 80, 0, 90, 100, 110, 120, 135, 150, 350, 180, 330, 270, 240, 300, 210];

const HATCHES = {
  engine: ['engine icing conditions', () => hatch('hatch-engine', 5, 45, 1.8)],
  airframe: ['airframe icing conditions', () => hatch('hatch-airframe', 5, 0, 1.8)],
  notKnown: ['icing not known', () => hatch('hatch-not-known', 5, 90, 1.2, '1.5 2.5')],
  colder: ['colder than the icing rule', () => hatch('hatch-colder', 9, -45, 1.2)],
  moisture: ['relative humidity over water', () => hatch('hatch-moisture', 4, -30, 1)],
  cloud: ['cloud ahead', () => hatch('hatch-cloud', 7, -60, 1)],
  convective: ['where convective cloud could be', () => hatch('hatch-convective', 5, -60, 1)],
  inversion: ['inversion', () => hatch('hatch-inversion', 6, 90, 1, '1 5')],
  bound: ['side of a gate that is not allowed', () => hatch('hatch-bound', 4, 30, 1.2)],
};

class Picture {
  constructor(briefing, against, width, zoom) {
    this.briefing = briefing;
    this.path = briefing.path;
    this.againstTime = against === 'time';
    this.width = width;
    this.height = Math.round(Math.min(820, Math.max(480, width * 0.56)));
    this.told = this.toldLevels();
    this.gutter = width - 6 - Math.max(60, ...this.told.map(({ words }) => textWidth(words, 12.5)));
    this.strip = this.gutter - STRIP - 26;
    this.right = this.strip - 16;
    this.bottom = this.height - AXIS_BOTTOM;
    this.used = new Set();
    this.key = [];

    const feet = this.path.pressureAltitudeFt;
    const lines = [this.path, ...briefing.changedPaths];
    this.end = Math.max(...lines.flatMap((one) => this.along(one)).filter(isKnown)) * 1.02;
    this.x = scale(0, this.end, AXIS_LEFT, this.right);
    this.lowest = Math.min(...feet);
    this.highest = Math.max(...feet, briefing.levelFt || 0);
    const spare = (this.highest - this.lowest) * 0.06;
    this.y = scale(this.lowest - spare, this.highest + spare, this.bottom, AXIS_TOP);
    this.points = this.along(this.path).map((value, i) => [this.x(value), this.y(feet[i])]);
    this.svg = shape('svg', { viewBox: `0 0 ${width} ${this.height}`, width: width * zoom, height: this.height * zoom,
      'aria-hidden': 'true', focusable: 'false' });
    this.draw();
  }

  /** The column along the lower axis: minutes or nautical miles. */
  along(columns) {
    return this.againstTime ? columns.timeS.map((value) => value / 60) : columns.distanceNm;
  }

  /** The place along the lower axis of what happens at a time and a distance. */
  placeOf(timeS, distanceNm) {
    return this.x(this.againstTime ? (isKnown(timeS) ? timeS / 60 : null) : distanceNm);
  }

  /** The place of what has a distance and no time of its own. */
  placeOfDistance(distanceNm) {
    return this.placeOf(columnAt(this.path.distanceNm, distanceNm, this.path.timeS), distanceNm);
  }

  isInside(x) {
    return x >= AXIS_LEFT && x <= this.right;
  }

  draw() {
    this.room = new Room(AXIS_LEFT + 2, AXIS_TOP + 2, this.right - 2, this.bottom - 2);
    this.room.takeAlong(this.points.filter(([x]) => !Number.isNaN(x)), 5);
    // in this order they find their places, too
    this.add(this.axes(), this.levels(), this.humidity(), this.cloudAhead(), this.changedClimbs(),
      this.icing(), through(this.points, 'climb'));
    const [gates, named] = this.gates();
    this.add(gates, this.reducing(), this.seatBelts());
    const marks = this.marks();
    this.add(this.gateNames(named), marks);
    this.svg.prepend(shape('defs', {}, ...[...this.used].map((name) => HATCHES[name][1]())));
    for (const name of this.used) this.key.push([this.swatch(name), HATCHES[name][0]]);
    this.cursor = shape('g', { class: 'cursor' }, line(0, AXIS_TOP, 0, this.bottom, ''),
      line(AXIS_LEFT, 0, this.right, 0, ''), shape('circle', { r: 5 }));
    this.add(this.cursor);
  }

  add(...layers) {
    this.svg.append(...layers);
  }

  fill(name) {
    this.used.add(name);
    return `url(#hatch-${name === 'notKnown' ? 'not-known' : name})`;
  }

  axes() {
    const group = shape('g', { class: 'axes' });
    for (const [y, text] of this.altitudeTicks()) {
      group.append(line(AXIS_LEFT, y, this.right, y, 'grid'), label(AXIS_LEFT - 8, y + 4, text, { 'text-anchor': 'end' }));
    }
    const minutes = (value) => this.placeOf(value * 60, columnAt(this.path.timeS, value * 60, this.path.distanceNm));
    const miles = (value) => this.placeOfDistance(value);
    const known = (values) => values.filter(isKnown);
    const endMinutes = Math.max(...this.path.timeS) / 60;
    const endMiles = Math.max(0, ...known(this.path.distanceNm));
    const time = [minutes, this.againstTime ? this.end : endMinutes, 'time, min', 46];
    const distance = [miles, endMiles, 'distance, NM', 46];
    const [below, above] = this.againstTime ? [time, distance] : [distance, time];
    this.axis(group, this.x, this.end, below[2], below[3], this.bottom, 1);
    if (!this.againstTime || endMiles > 0) this.axis(group, above[0], above[1], above[2], above[3], AXIS_TOP, -1);
    group.append(shape('rect', { x: AXIS_LEFT, y: AXIS_TOP, width: this.right - AXIS_LEFT, height: this.bottom - AXIS_TOP, class: 'frame' }));
    return group;
  }

  /** The marks of the altimeter, as dense as they can be read; the transition altitude and the level first. */
  altitudeTicks() {
    const b = this.briefing;
    const perFoot = this.y(0) - this.y(1);
    const step = [1000, 2000, 5000, 10000].find((feet) => feet * perFoot >= 20) || 10000;
    const isFirst = ({ text, pressureAltitudeFt }) => text === `${b.transitionAltitudeFt} ft` || pressureAltitudeFt === b.levelFt;
    const chosen = [];
    for (const mark of [...b.altimeterMarks.filter(isFirst), ...marksEvery(b, step)]) {
      const y = this.y(mark.pressureAltitudeFt);
      const isFree = chosen.every(([other]) => Math.abs(other - y) >= 18);
      if (isFree && y <= this.bottom && y >= AXIS_TOP) chosen.push([y, mark.text]);
    }
    return chosen;
  }

  axis(group, placeOf, end, title, apart, y, downwards) {
    const text = y + (downwards > 0 ? 20 : -11);
    group.append(label(AXIS_LEFT - 8, text, title, { 'text-anchor': 'end', class: 'title' }));
    for (const value of ticks(end, placeOf, apart)) {
      const x = placeOf(value);
      if (Number.isNaN(x)) continue;
      group.append(line(x, y, x, y + 6 * downwards, 'tick'), label(x, text, String(value), { 'text-anchor': 'middle' }));
      if (downwards > 0) group.append(line(x, AXIS_TOP, x, this.bottom, 'grid'));
    }
  }

  /** What lies at a level or between two, told at the right of the picture. */
  toldLevels() {
    const b = this.briefing;
    const ta = b.transitionAltitudeFt;
    const mark = b.altimeterMarks.find(({ text }) => text === `${ta} ft`);
    const onQnh = mark ? mark.pressureAltitudeFt : columnAt(this.path.altitudeOnQnhFt, ta, this.path.pressureAltitudeFt);
    return [
      ...b.inversions.map((one) => ({ base: one.baseFt, top: one.topFt, name: 'inversion', words: `inversion, ${number(one.warmerK, 1)} K warmer` })),
      ...(b.turbulence && b.turbulence.cloud ? [b.turbulence.cloud] : []).map((one) => (
        { base: one.baseFt, top: one.topFt, name: 'convective', words: 'convective cloud possible' })),
      ...b.freezingLevels.map((one) => ({ at: one.pressureAltitudeFt, name: 'freezing', words: `0 °C, ${one.direction === 'falling' ? 'colder' : 'warmer'} above` })),
      { at: onQnh, name: 'transition', words: 'transition altitude' },
      { at: b.tropopauseFt, name: 'tropopause', words: 'tropopause' },
      { at: b.levelFt, name: 'top', words: 'level of the climb' },
    ].filter(({ at, base }) => isKnown(at) || isKnown(base));
  }

  levels() {
    const group = shape('g', { class: 'levels' });
    const inside = (feet) => Math.min(this.bottom, Math.max(AXIS_TOP, this.y(feet)));
    const places = [];
    for (const { at, base, top, name, words } of this.told) {
      const [low, high] = isKnown(at) ? [this.y(at), this.y(at)] : [inside(base), inside(top)];
      if (low > this.bottom || high < AXIS_TOP || (isKnown(base) && low <= high)) continue;
      if (isKnown(at)) {
        group.append(line(AXIS_LEFT, low, this.right, low, name));
      } else {
        // all of the sky can be cloud: that is told beside the picture, and does not cover it
        const [from, to] = name === 'convective' ? [this.right + 2, this.strip - 2] : [AXIS_LEFT, this.right];
        group.append(shape('rect', { x: from, y: high, width: to - from, height: Math.max(2, low - high), fill: this.fill(name), class: name }));
      }
      places.push([(low + high) / 2, words]);
    }
    spread(places.map(([y]) => y), 17, AXIS_TOP + 4, this.bottom - 4).forEach((y, i) => {
      group.append(shape('path', { d: `M${this.gutter - 22} ${places[i][0].toFixed(1)}L${this.gutter - 4} ${y.toFixed(1)}`, class: 'leader' }),
        label(this.gutter, y + 4, places[i][1]));
    });
    return group;
  }

  /** Relative humidity beside the picture, on the same altitude axis. */
  humidity() {
    const group = shape('g', { class: 'humidity' });
    const air = this.briefing.air;
    if (!air) return group;
    const left = this.strip;
    const x = scale(0, 100, left, left + STRIP);
    const inside = (y) => Math.min(this.bottom, Math.max(AXIS_TOP, y));
    let run = [];
    const close = () => {
      if (run.length > 1) {
        const first = [x(0), run[0][1]];
        const last = [x(0), run[run.length - 1][1]];
        const area = through([first, ...run, last], 'moisture');
        area.setAttribute('fill', this.fill('moisture'));
        group.append(area);
      }
      run = [];
    };
    air.pressureAltitudeFt.forEach((feet, i) => {
      const percent = air.relativeHumidityPercent[i];
      if (isKnown(percent)) run.push([x(Math.min(100, percent)), inside(this.y(feet))]);
      else close();
    });
    close();
    group.append(shape('rect', { x: left, y: AXIS_TOP, width: STRIP, height: this.bottom - AXIS_TOP, class: 'frame' }),
      line(x(50), AXIS_TOP, x(50), this.bottom, 'grid'),
      label(left + STRIP / 2, AXIS_TOP - 11, 'humidity, %', { 'text-anchor': 'middle', class: 'title' }));
    for (const percent of [0, 50, 100]) {
      group.append(label(x(percent), this.bottom + 20, String(percent), { 'text-anchor': 'middle' }));
    }
    return group;
  }

  cloudAhead() {
    const cloud = this.briefing.cloudTop;
    const group = shape('g', { class: 'cloud' });
    if (!cloud || !isKnown(cloud.topFt)) return group;
    const last = this.path.distanceNm[this.path.distanceNm.length - 1];
    const left = this.placeOfDistance(cloud.nearEdgeNm);
    const right = this.placeOfDistance(Math.min(cloud.farEdgeNm, last));
    const top = Math.max(AXIS_TOP, this.y(cloud.topFt));
    const base = isKnown(cloud.baseFt) ? Math.min(this.bottom, this.y(cloud.baseFt)) : this.bottom;
    if (!this.isInside(left) || !this.isInside(right) || base <= top) return group;
    group.append(shape('rect', { x: left, y: top, width: right - left, height: base - top, rx: 14, fill: this.fill('cloud'), class: 'mass' }));
    const words = 'cloud ahead';
    const width = textWidth(words, 12.5);
    const place = this.room.place((left + right) / 2, base, width, 16, [90, 60, 120], 8);
    this.room.take(left, top, right, base);
    group.append(label(place.x, place.y + 4, words, { 'text-anchor': 'middle' }));
    return group;
  }

  /** The climbs of a changed mass, temperature and wind, each with its dashes and a letter at its end. */
  changedClimbs() {
    const group = shape('g', { class: 'changed' });
    const ends = [];
    this.briefing.changedPaths.forEach((changed, i) => {
      const points = this.along(changed).map((value, k) => [this.x(value), this.y(changed.pressureAltitudeFt[k])]);
      const drawn = through(points, `changed-${i % 3}`);
      const letter = 'abcdefgh'[i];
      group.append(drawn);
      ends.push([points[points.length - 1], letter]);
      this.key.push([this.sample(`changed changed-${i % 3}`), `${letter}: ${changed.change}`]);
    });
    const places = spread(ends.map(([[x]]) => x), 16, AXIS_LEFT, this.right - 8);
    ends.forEach(([[x, y], letter], i) => {
      if (Number.isNaN(x)) return;
      const up = Math.max(AXIS_TOP + 14, y - 14);
      group.append(line(x, y, places[i], up + 2, 'leader'), label(places[i], up, letter, { 'text-anchor': 'middle', class: 'letter' }));
      this.room.take(places[i] - 8, up - 14, places[i] + 8, up + 4);
    });
    return group;
  }

  /** Hatched bands along the climb: the engine's above the line, the airframe's below it. */
  icing() {
    const group = shape('g', { class: 'icing' });
    const b = this.briefing;
    const spans = [
      ...b.icingConditions.map((span) => [span, span.part]),
      ...b.icingNotKnown.map((span) => [span, 'notKnown']),
      ...b.icingColderThanTheRule.map((span) => [span, 'colder']),
    ];
    for (const [span, name] of spans) {
      const off = span.part === 'engine' ? -6 : 6;
      const points = [[this.placeOf(span.entryTimeS, span.entryDistanceNm), this.y(span.fromFt)]];
      this.path.timeS.forEach((time, i) => {
        if (time > span.entryTimeS && time < span.exitTimeS) points.push(this.points[i]);
      });
      points.push([this.placeOf(span.exitTimeS, span.exitDistanceNm), this.y(span.toFt)]);
      const band = through(points.map(([x, y]) => [x + off, y + off]), 'band-along');
      band.setAttribute('stroke', this.fill(name in HATCHES ? name : 'engine'));
      group.append(band);
      this.room.takeAlong(points.filter(([x, y]) => !Number.isNaN(x + y)).map(([x, y]) => [x + off, y + off]), 7);
      const on = [this.placeOf(span.protectionOnByTimeS, span.protectionOnByDistanceNm), this.y(span.protectionOnByFt)];
      if (name === span.part && !Number.isNaN(on[0] + on[1])) {
        group.append(line(on[0], on[1], on[0] + off * 2, on[1] + off * 2, 'on-by'));
      }
    }
    if (b.icingConditions.some((span) => isKnown(span.protectionOnByDistanceNm))) {
      this.key.push([this.sample('icing on-by'), 'ice protection on by here']);
    }
    return group;
  }

  gates() {
    const group = shape('g', { class: 'gates' });
    const named = [];
    for (const gate of this.briefing.restrictions) {
      const x = this.placeOfDistance(gate.distanceNm);
      if (!this.isInside(x)) continue;
      const [low, high] = [this.y(gate.lowerPressureAltitudeFt), this.y(gate.upperPressureAltitudeFt)];
      const bound = (y, side) => {
        if (Number.isNaN(y)) return;
        group.append(shape('rect', { x: x - 15, y: side > 0 ? y : y - 9, width: 30, height: 9, fill: this.fill('bound') }),
          line(x - 15, y, x + 15, y, 'bound'));
        this.room.take(x - 16, y - 10, x + 16, y + 10);
      };
      bound(low, 1);
      bound(high, -1);
      // a gate of speed alone stands on the climb, one with a single bound is open to the other side
      const climb = this.y(columnAt(this.path.distanceNm, gate.distanceNm, this.path.pressureAltitudeFt));
      const open = Number.isNaN(low) && Number.isNaN(high) ? [climb + 40, climb - 40] : [high + 46, low - 46];
      const from = Number.isNaN(low) ? Math.min(this.bottom, open[0]) : low;
      const to = Number.isNaN(high) ? Math.max(AXIS_TOP, open[1]) : high;
      group.append(line(x, from, x, to, 'post'));
      this.room.take(x - 2, Math.min(from, to), x + 2, Math.max(from, to));
      named.push({ gate, x, anchor: Number.isNaN(low) ? (Number.isNaN(high) ? (from + to) / 2 : high) : low });
    }
    return [group, named];
  }

  /** Name and margin of each gate; the numbers have found their places before. */
  gateNames(named) {
    const group = shape('g', { class: 'gates' });
    for (const { gate, x, anchor } of named) {
      const lines = [gate.name, [...margins(gate), gate.verdict].join(', ')];
      const width = Math.max(...lines.map((words) => textWidth(words, 12.5, 700)));
      const place = this.room.place(x, anchor, width, 34, GATE_NAMES_TOWARDS, 12);
      group.append(line(x, anchor, Math.max(place.x - width / 2, Math.min(place.x + width / 2, x)), place.y - 14 * Math.sign(place.y - anchor), 'leader'),
        label(place.x - width / 2, place.y - 3, lines[0], { class: gate.verdict === 'missed' ? 'strong' : '' }),
        label(place.x - width / 2, place.y + 13, lines[1], { class: gate.verdict === 'missed' ? 'strong' : '' }));
    }
    return group;
  }

  reducing() {
    const group = shape('g', { class: 'reducing' });
    const at = this.briefing.levelOff && this.briefing.levelOff.reducing;
    if (!at) return group;
    const [x, y] = [this.placeOf(at.timeS, at.distanceNm), this.y(at.pressureAltitudeFt)];
    if (Number.isNaN(x + y)) return group;
    group.append(shape('path', { d: `M${x - 6} ${y}L${x} ${y - 6}L${x + 6} ${y}L${x} ${y + 6}Z` }));
    this.key.push([shape('svg', { viewBox: '-14 -8 28 16', width: 28, height: 16, class: 'reducing' },
      shape('path', { d: 'M-6 0L0 -6L6 0L0 6Z' })), 'reduce the rate from here']);
    return group;
  }

  /** Along the lower edge, where there is reason for the seat-belt sign. */
  seatBelts() {
    const group = shape('g', { class: 'belts' });
    const spans = this.briefing.turbulence ? this.briefing.turbulence.seatBelts : [];
    for (const span of spans) {
      const [from, to] = [this.placeOf(span.entryTimeS, span.entryDistanceNm), this.placeOf(span.exitTimeS, span.exitDistanceNm)];
      if (Number.isNaN(from + to)) continue;
      group.append(line(from, this.bottom - 5, to, this.bottom - 5, 'belt'));
      this.room.take(from, this.bottom - 10, to, this.bottom);
    }
    if (group.childElementCount) this.key.push([this.sample('belts belt'), 'reason for the seat-belt sign']);
    return group;
  }

  /** The numbers of the table "What, by when": those of one place in a row with one line to it. */
  marks() {
    const group = shape('g', { class: 'marks' });
    const lines = shape('g');
    group.append(lines);
    const groups = [];
    const due = this.briefing.whatByWhen.map((mark) => {
      const at = mark.latest || mark;
      return { ...mark, x: this.placeOf(at.timeS, at.distanceNm), y: this.y(at.pressureAltitudeFt) };
    }).filter(({ x, y }) => !Number.isNaN(x + y)).sort((a, b) => a.x - b.x || a.number - b.number);
    for (const mark of due) {
      const open = groups[groups.length - 1];
      if (open && open.length < 4 && Math.hypot(mark.x - open[0].x, mark.y - open[0].y) < 14) open.push(mark);
      else groups.push([mark]);
    }
    for (const together of groups) {
      const { x, y } = together[0];
      const place = this.room.place(x, y, together.length * 21, 20, NUMBERS_TOWARDS, 10);
      lines.append(line(x, y, place.x, place.y, 'leader'));
      together.forEach((mark, i) => {
        lines.append(shape('circle', { cx: mark.x, cy: mark.y, r: 2.5, class: 'spot' }));
        group.append(this.badge(mark.kind, place.x + (i - (together.length - 1) / 2) * 21, place.y, mark.number));
      });
    }
    const kinds = new Set(due.map(({ kind }) => kind));
    for (const kind of ['do', 'expect', 'check'].filter((one) => kinds.has(one))) {
      this.key.push([shape('svg', { viewBox: '-14 -11 28 22', width: 28, height: 22, class: 'marks' }, this.badge(kind, 0, 0, 'n')),
        { do: 'to do', expect: 'to expect', check: 'to check' }[kind] + ', numbered as in the table']);
    }
    return group;
  }

  /** Shape tells the kind: a full disc to do, a ring to expect, a square to check. */
  badge(kind, x, y, words) {
    const body = kind === 'check'
      ? shape('rect', { x: x - 9, y: y - 9, width: 18, height: 18 })
      : shape('circle', { cx: x, cy: y, r: 10 });
    return shape('g', { class: `badge ${kind}` }, body, label(x, y + 4, String(words), { 'text-anchor': 'middle' }));
  }

  swatch(name) {
    return shape('svg', { viewBox: '0 0 28 14', width: 28, height: 14 },
      shape('rect', { x: 0.5, y: 0.5, width: 27, height: 13, fill: this.fill(name), class: 'swatch' }));
  }

  sample(name) {
    const [layer, own] = name.split(' ');
    return shape('svg', { viewBox: '0 0 28 14', width: 28, height: 14, class: layer }, line(0, 7, 28, 7, own));
  }

  /** Moves the cursor to a sample. */
  show(i) {
    const [x, y] = this.points[i];
    const [upright, level, dot] = this.cursor.children;
    upright.setAttribute('transform', `translate(${x} 0)`);
    level.setAttribute('transform', `translate(0 ${y})`);
    dot.setAttribute('transform', `translate(${x} ${y})`);
  }

  /** The sample nearest to a place on the screen. */
  nearest(clientX) {
    const box = this.svg.getBoundingClientRect();
    const x = ((clientX - box.left) / box.width) * this.width;
    let best = 0;
    this.points.forEach(([place], i) => {
      if (Math.abs(place - x) < Math.abs(this.points[best][0] - x)) best = i;
    });
    return best;
  }
}
