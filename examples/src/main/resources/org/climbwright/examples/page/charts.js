// The two small charts beside each other, altitude upwards in both.

const DASHES = [[], [10, 5], [2, 4], [10, 4, 2, 4], [5, 3], [14, 4, 2, 4, 2, 4]];

function speedBandChart(briefing) {
  const band = briefing.speedBand;
  if (!band) return null;
  return chart('Speeds against altitude', 'calibrated airspeed, kn', band.pressureAltitudeFt, [
    ['schedule', band.scheduleKn, 3],
    ['minimum', band.minimumKn, 1.5],
    ['rough air', band.roughAirKn, 1.5],
    ['limit', band.limitKn, 2],
    [`buffet at ${band.buffetLoadFactor} g, slow side`, band.buffetLowKn, 1.5],
    [`buffet at ${band.buffetLoadFactor} g, fast side`, band.buffetHighKn, 1.5],
  ], 0, briefing);
}

function powerChart(briefing) {
  const power = briefing.power || [];
  if (power.length === 0) return null;
  const column = (name) => power.map((point) => point[name]);
  return chart('Where the excess power goes', 'worth of it, ft/min', column('pressureAltitudeFt'), [
    ['all of the excess', column('specificExcessPowerFtPerMin'), 1.5],
    ['climb', column('powerOfClimbFtPerMin'), 3],
    ['acceleration', column('powerOfAccelerationFtPerMin'), 1.5],
    ['change of the wind', column('powerOfWindChangeFtPerMin'), 1.5],
    ['taken by bleed', column('powerTakenByBleedFtPerMin'), 1.5],
  ], 0, briefing);
}

function chart(title, unit, altitudes, columns, digits, briefing) {
  const lines = columns
    .map(([name, values, width], i) => ({ name, values: values || [], width, dash: DASHES[i % DASHES.length] }))
    .filter(({ values }) => values.some(isKnown));
  const box = element('div', { class: 'plot', role: 'img', 'aria-label': `${title}; its figures are in the table below it` });
  const key = element('ul', { class: 'key' }, ...lines.map(({ name, width, dash }) => element('li', {},
    shape('svg', { viewBox: '0 0 40 12', width: 40, height: 12 },
      shape('path', { d: 'M0 6L40 6', class: 'sample', 'stroke-width': width, 'stroke-dasharray': dash.join(' ') })), name)));
  const figures = element('details', {}, element('summary', {}, 'The figures'),
    element('div', { class: 'scroll' },
      table(`${title}: ${unit}`, ['Pressure altitude, ft', ...lines.map(({ name }) => name)],
        altitudes.map((feet, i) => [number(feet), ...lines.map(({ values }) => number(values[i], digits))]))));
  const figure = element('figure', {}, element('figcaption', {}, title), box, key, figures);
  return { figure, resize: plot(box, unit, altitudes, lines, briefing) };
}

/** A plot with altitude along its upright axis; answers a function that fits it to its box. */
function plot(box, unit, altitudes, lines, briefing) {
  const ink = '#1f2a36';
  const grid = { stroke: '#dfe3e8', width: 1 };
  const font = '13px system-ui, sans-serif';
  const words = new Map(marksEvery(briefing, 5000).map((mark) => [mark.pressureAltitudeFt, mark.text]));
  const own = { splits: () => [...words.keys()], values: (_, splits) => splits.map((feet) => words.get(feet) || '') };
  const made = new uPlot({
    width: 300,
    height: 420,
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: false, ori: 1, range: [Math.min(...briefing.path.pressureAltitudeFt), briefing.levelFt || Math.max(...altitudes)] }, value: { ori: 0 } },
    axes: [
      { side: 3, size: 72, stroke: ink, grid, font, ...own },
      { side: 2, scale: 'value', stroke: ink, grid, font, label: unit, labelFont: font, labelSize: 22, size: 34, space: 60,
        values: (_, splits) => splits.map((value) => number(value)) },
    ],
    series: [{}, ...lines.map(({ name, width, dash }) => ({
      label: name, scale: 'value', stroke: ink, width, dash, points: { show: false } }))],
  }, [altitudes, ...lines.map(({ values }) => values)], box);
  return (width) => made.setSize({ width: Math.max(240, Math.floor(width)), height: 420 });
}
