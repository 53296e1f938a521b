// Puts the page together.

const briefing = JSON.parse(document.getElementById('briefing').textContent);
const byId = (id) => document.getElementById(id);
const path = briefing.path;
const hasDistances = path.distanceNm.every(isKnown);
const last = path.timeS.length - 1;
const NARROWEST = 920;
let against = hasDistances ? 'distance' : 'time';
let sample = 0;
let picture;

/** What the readout tells of a sample: words, column, digits, unit. */
const VALUES = [
  ['Pressure altitude', 'pressureAltitudeFt', 0, 'ft'],
  ['Altitude on QNH', 'altitudeOnQnhFt', 0, 'ft'],
  ['True altitude', 'trueAltitudeFt', 0, 'ft'],
  ['Calibrated airspeed', 'calibratedAirspeedKn', 0, 'kn'],
  ['Mach', 'mach', 3, ''],
  ['True airspeed', 'trueAirspeedKn', 0, 'kn'],
  ['Ground speed', 'groundSpeedKn', 0, 'kn'],
  ['Wind along the track', 'alongTrackWindKn', 0, 'kn'],
  ['Rate on the altimeter', 'rateFtPerMin', 0, 'ft/min'],
  ['Gradient over the ground', 'gradientPercent', 1, '%'],
  ['Static air temperature', 'staticAirTemperatureC', 1, '°C'],
  ['Total air temperature', 'totalAirTemperatureC', 1, '°C'],
  ['ISA deviation', 'isaDeviationK', 1, 'K'],
  ['Relative humidity', 'relativeHumidityPercent', 0, '%'],
  ['Mass', 'massKg', 0, 'kg'],
  ['Fuel used', 'fuelKg', 0, 'kg'],
  ['Cabin altitude', 'cabinAltitudeFt', 0, 'ft'],
  ['Cabin rate', 'cabinRateFtPerMin', 0, 'ft/min'],
  ['Differential', 'differentialPsi', 2, 'psi'],
];
const SIGNED = new Set(['alongTrackWindKn', 'isaDeviationK', 'cabinRateFtPerMin']);

function outline() {
  const top = briefing.topOfClimb;
  byId('made-from').textContent = `${briefing.aerodrome}, elevation ${number(briefing.elevationFt, 0, 'ft')}, QNH ${number(briefing.qnhHpa, 1, 'hPa')}, track ${number(briefing.trackDegTrue)}° true. Air: ${briefing.sounding}.`;
  const speeds = briefing.speeds;
  facts(byId('outline'), [
    ['Top of climb', top.altitudeText],
    ['Time', duration(top.timeS)],
    ['Distance', number(top.distanceNm, 1, 'NM')],
    ['Fuel', number(top.fuelKg, 0, 'kg')],
    ['Mass at the beginning', number(briefing.massKg, 0, 'kg')],
    ['Speeds', `${number(speeds.limitKn, 0, 'kn')} below ${speeds.limitBelowText}, ${number(speeds.calibratedAirspeedKn, 0, 'kn')}, M${number(speeds.mach, 2)}`],
    ['Ends because', top.endsBecause],
  ]);
}

/** The picture in words, for who does not see it. */
function pictureWords() {
  const top = briefing.topOfClimb;
  const parts = [`The climb begins at ${path.altitudeText[0]} and reaches ${top.altitudeText} after ${duration(top.timeS)}`
    + (isKnown(top.distanceNm) ? ` and ${number(top.distanceNm, 1, 'NM')}.` : '; its distance is not known.')];
  for (const span of briefing.icingConditions) {
    parts.push(`${span.part[0].toUpperCase() + span.part.slice(1)} icing conditions from ${altitudes(span)}, protection on ${span.protectionOnBeforeClimb ? 'before the climb' : 'by ' + unbroken(span.protectionOnByAltitudeText)}.`);
  }
  if (briefing.icingConditions.length === 0) parts.push('No span meets a rule for icing conditions, which is not “no icing”.');
  for (const level of briefing.freezingLevels) {
    parts.push(`0\u00a0°C at ${number(level.pressureAltitudeFt, 0, 'ft')} pressure altitude, ${level.direction === 'falling' ? 'colder' : 'warmer'} above.`);
  }
  for (const gate of briefing.restrictions) {
    parts.push(`${gate.name}: ${[gate.verdict, ...margins(gate)].join(', ')}.`);
  }
  byId('picture-words').textContent = parts.join(' ');
}

/** Draws the picture as wide as its box, but not so narrow that its words have no room. */
function drawPicture(most = Infinity) {
  const box = byId('picture-box');
  const zoom = parseFloat(getComputedStyle(document.documentElement).fontSize) / 16;
  picture = new Picture(briefing, against, Math.max(NARROWEST, Math.floor(Math.min(most, box.clientWidth) / zoom)), zoom);
  const screen = element('div', { id: 'climb', role: 'slider', tabindex: 0, 'aria-label': `Point on the climb; altitude against ${against}`,
    'aria-valuemin': 0, 'aria-valuemax': last, 'aria-describedby': 'picture-words' }, picture.svg);
  const focused = document.activeElement && document.activeElement.id === 'climb';
  box.replaceChildren(screen);
  if (focused) screen.focus();
  screen.addEventListener('keydown', byKey);
  for (const event of ['pointermove', 'pointerdown']) {
    screen.addEventListener(event, (pointed) => show(picture.nearest(pointed.clientX)));
  }
  byId('key').replaceChildren(...picture.key.map(([sign, words]) => element('li', {}, sign, words)));
  byId('sideways').hidden = box.scrollWidth <= box.clientWidth + 1;
  show(sample);
}

function byKey(event) {
  const next = { ArrowRight: sample + 1, ArrowUp: sample + 1, ArrowLeft: sample - 1, ArrowDown: sample - 1,
    PageUp: sample + 5, PageDown: sample - 5, Home: 0, End: last }[event.key];
  if (next === undefined) return;
  event.preventDefault();
  show(Math.min(last, Math.max(0, next)));
  keepInView();
}

/** On a narrow screen the picture lies in a box that scrolls: the cursor must not leave it. */
function keepInView() {
  const box = byId('picture-box');
  const x = picture.points[sample][0] * picture.zoom - box.scrollLeft;
  if (x < 40 || x > box.clientWidth - 40) box.scrollLeft += x - box.clientWidth / 2;
}

function show(i) {
  sample = i;
  picture.show(i);
  const words = [path.altitudeText[i], duration(path.timeS[i]), isKnown(path.distanceNm[i]) ? number(path.distanceNm[i], 1, 'NM') : 'distance not known', number(path.calibratedAirspeedKn[i], 0, 'kn'),
    number(path.rateFtPerMin[i], 0, 'ft/min'), number(path.staticAirTemperatureC[i], 1, '°C')].join(', ');
  byId('point').textContent = words;
  byId('climb').setAttribute('aria-valuenow', i);
  byId('climb').setAttribute('aria-valuetext', words);
  facts(byId('values'), VALUES.filter(([, column]) => path[column] && path[column].some(isKnown)).map(
    ([name, column, digits, unit]) => [name, (SIGNED.has(column) ? signed : number)(path[column][i], digits, unit)]));
}

function put(section, ...content) {
  for (const one of content) {
    section.append(one.tagName === 'TABLE' ? element('div', { class: 'scroll' }, one) : one);
  }
}

function part(section, title, ...content) {
  section.append(element('h3', {}, title));
  put(section, ...content);
}

function sections() {
  const none = (words) => element('p', {}, words);
  put(byId('what-by-when'), briefing.whatByWhen.length ? whatByWhen(briefing) : none('Nothing to tell.'));
  put(byId('check-card'), briefing.checkCard.length ? checkCard(briefing) : none('No checks.'));
  const more = byId('more');
  if (briefing.changes.length) part(more, 'What changes this climb', changes(briefing));
  part(more, 'Restrictions', briefing.restrictions.length ? restrictions(briefing) : none('None were given.'));
  if (briefing.restrictionConflicts.length) put(more, bullets(briefing.restrictionConflicts));
  if (briefing.levelOff) part(more, 'Level-off', ...levelOff(briefing));
  part(more, 'Cabin', briefing.cabinChecks.length ? cabin(briefing) : none('No pressurised cabin was given.'));
  const icy = briefing.icingConditions.length + briefing.icingNotKnown.length + briefing.icingColderThanTheRule.length;
  part(more, 'Icing conditions', icy ? icing(briefing) : none('No span was found, which is not “no icing”.'));
  part(more, 'Freezing levels', briefing.freezingLevels.length ? freezing(briefing) : none('The climb crosses no 0 °C level.'));
  if (briefing.inversions.length) part(more, 'Inversions', inversions(briefing));
  if (briefing.turbulence) part(more, 'Turbulence and seat belts', ...turbulence(briefing));
  if (briefing.cloudTop) part(more, 'Cloud ahead', ...cloudAhead(briefing));
  if (briefing.notes.length) part(more, 'Notes', bullets(briefing.notes));
  const ground = byId('ground');
  part(ground, 'Limits of this briefing', bullets(briefing.limits));
  if (briefing.sources.length) part(ground, 'Sources', bullets(briefing.sources));
  if (briefing.input && briefing.input.length) part(ground, 'Made from', element('pre', {}, ...briefing.input.map(inputLine)));
}

/** A line that is only a comment, or blank, stands on the screen and not on paper. */
function inputLine(text) {
  return element('span', /^\s*(#.*)?$/.test(text) ? { class: 'screen-only' } : {}, text + '\n');
}

/** A box that scrolls can be reached and scrolled by keyboard; one that does not is no stop. */
function reachScrollBoxes() {
  for (const box of document.querySelectorAll('.scroll:not(#picture-box)')) {
    const caption = box.querySelector('caption');
    if (box.scrollWidth > box.clientWidth + 1 && caption) {
      box.setAttribute('tabindex', 0);
      box.setAttribute('role', 'region');
      box.setAttribute('aria-label', caption.textContent);
    } else {
      for (const name of ['tabindex', 'role', 'aria-label']) box.removeAttribute(name);
    }
  }
}

outline();
pictureWords();
sections();
const charts = [speedBandChart(briefing), powerChart(briefing)].filter(Boolean);
byId('charts').hidden = charts.length === 0;
document.querySelector('#charts .pair').append(...charts.map(({ figure }) => figure));

function fit() {
  drawPicture();
  charts.forEach(({ figure, resize }) => resize(figure.clientWidth));
  reachScrollBoxes();
}

byId('against').addEventListener('change', (event) => {
  against = event.target.value;
  drawPicture();
});
for (const choice of document.querySelectorAll('#against input')) {
  choice.checked = choice.value === against;
  choice.disabled = choice.value === 'distance' && !hasDistances;
}
byId('no-distance').hidden = hasDistances;
// A sheet of A4 is 703 px wide within its margins: drawn for that, words stay as large as the text.
window.addEventListener('beforeprint', () => {
  drawPicture(NARROWEST);
  charts.forEach(({ resize }) => resize(340));
});
window.addEventListener('afterprint', fit);
let width = 0;
new ResizeObserver(() => {
  if (width === document.documentElement.clientWidth) return;
  width = document.documentElement.clientWidth;
  fit();
}).observe(document.documentElement);
fit();
