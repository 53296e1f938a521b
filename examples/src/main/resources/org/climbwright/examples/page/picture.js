// The picture: altitude against distance or time, with what lies along the climb. Only scaling happens here.

// degrees from the right, clockwise, the best first: numbers above the climb, names below it
const NUMBERS_TOWARDS = [225, 240, 210, 255, 195, 270, 45, 30, 60, 15, 75, 0, 90, 180, 285];
const GATE_NAMES_TOWARDS = [30, 10, 60, 80, 0, 90, 100, 110, 120, 135, 150, 350, 180, 330, 270, 240, 300, 210];

class Picture extends Frame {
  constructor(briefing, against, width, zoom) {
    super(briefing, against, width, zoom);
    this.draw();
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

  cloudAhead() {
    const cloud = this.briefing.cloudTop;
    const group = shape('g', { class: 'cloud' });
    if (!cloud || !isKnown(cloud.topPressureAltitudeFt)) return group;
    const last = this.path.distanceNm[this.path.distanceNm.length - 1];
    const left = this.placeOfDistance(cloud.nearEdgeNm);
    const right = this.placeOfDistance(Math.min(cloud.farEdgeNm, last));
    const top = Math.max(AXIS_TOP, this.y(cloud.topPressureAltitudeFt));
    const base = isKnown(cloud.basePressureAltitudeFt) ? Math.min(this.bottom, this.y(cloud.basePressureAltitudeFt)) : this.bottom;
    if (!this.isInside(left) || !this.isInside(right) || base <= top) return group;
    group.append(shape('rect', { x: left, y: top, width: right - left, height: base - top, rx: 14, fill: this.fill('cloud'), class: 'mass' }));
    const words = 'cloud ahead';
    const width = textWidth(words, 12.5);
    const place = this.room.place((left + right) / 2, base, width, 16, [90, 60, 120], 8, true);
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
        this.room.take(x - 20, y - 12, x + 20, y + 12);
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
      const outcome = [...margins(gate), gate.verdict].join(', ');
      const style = { class: gate.verdict === 'missed' ? 'strong' : '' };
      // where there is no room for a long name its first word does, and the table has the rest
      for (const lines of [[gate.name, outcome], [`${gate.name.split(' ')[0]} …`, outcome], [outcome]]) {
        const width = Math.max(...lines.map((words) => textWidth(words, 12.5, 700)));
        const height = lines.length * 17;
        const place = this.room.find(x, anchor, width, height, GATE_NAMES_TOWARDS, 12, true);
        if (!place) continue;
        this.room.keep(x, anchor, place, width, height);
        group.append(line(x, anchor, Math.max(place.x - width / 2, Math.min(place.x + width / 2, x)), place.y - 14 * Math.sign(place.y - anchor), 'leader'),
          ...lines.map((words, i) => label(place.x - width / 2, place.y - height / 2 + 14 + i * 16, words, style)));
        break;
      }
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
