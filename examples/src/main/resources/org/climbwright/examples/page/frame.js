// The frame of the picture: scales, axes, what lies at a level, and the humidity beside it.

const AXIS_LEFT = 100;
const AXIS_TOP = 40;
const AXIS_BOTTOM = 40;
const STRIP = 62;

const HATCHES = {
  engine: ['engine icing conditions', () => hatch('hatch-engine', 5, 45, 1.8)],
  airframe: ['airframe icing conditions', () => hatch('hatch-airframe', 5, 0, 1.8)],
  notKnown: ['icing not known', () => hatch('hatch-not-known', 5, 90, 1.2, '1.5 2.5')],
  colder: ['colder than the icing rule', () => hatch('hatch-colder', 9, -45, 1.2)],
  moisture: ['relative humidity over water', () => hatch('hatch-moisture', 4, -30, 1)],
  cloud: ['cloud ahead', () => hatch('hatch-cloud', 7, -60, 1)],
  convective: ['where convective cloud could be', () => hatch('hatch-convective', 5, -60, 1)],
  inversion: ['inversion', () => hatch('hatch-inversion', 6, 90, 1, '1 5')],
  bound: ['side that a restriction does not allow', () => hatch('hatch-bound', 4, 30, 1.2)],
};

class Frame {
  constructor(briefing, against, width, zoom) {
    this.briefing = briefing;
    this.path = briefing.path;
    this.againstTime = against === 'time';
    this.width = width;
    this.zoom = zoom;
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
      ...b.inversions.map((one) => ({ base: one.basePressureAltitudeFt, top: one.topPressureAltitudeFt, name: 'inversion', words: `inversion, ${number(one.warmerK, 1)} K warmer` })),
      ...(b.turbulence && b.turbulence.cloud ? [b.turbulence.cloud] : []).map((one) => (
        { base: one.basePressureAltitudeFt, top: one.topPressureAltitudeFt, name: 'convective', words: 'convective cloud possible' })),
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
        this.room.across.push(low);
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

  swatch(name) {
    return shape('svg', { viewBox: '0 0 28 14', width: 28, height: 14 },
      shape('rect', { x: 0.5, y: 0.5, width: 27, height: 13, fill: this.fill(name), class: 'swatch' }));
  }

  sample(name) {
    const [layer, own] = name.split(' ');
    return shape('svg', { viewBox: '0 0 28 14', width: 28, height: 14, class: layer }, line(0, 7, 28, 7, own));
  }
}
