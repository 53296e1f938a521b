// Numbers as words, and elements. Rounding for display only: every figure comes from the briefing.

const NOT_KNOWN = 'not known';
const DASH = '–';

const isKnown = (value) => value !== null && value !== undefined;

function number(value, digits = 0, unit = '') {
  if (!isKnown(value)) return NOT_KNOWN;
  const text = Math.abs(value).toFixed(digits);
  const sign = value < 0 && Number(text) !== 0 ? '−' : '';
  return sign + text + (unit ? '\u00a0' + unit : '');
}

function signed(value, digits = 0, unit = '') {
  const text = number(value, digits, unit);
  return isKnown(value) && value > 0 && Number(value.toFixed(digits)) !== 0 ? '+' + text : text;
}

/** Minutes and seconds, as 18:12. */
function clock(seconds) {
  if (!isKnown(seconds)) return NOT_KNOWN;
  const whole = Math.round(seconds);
  return Math.floor(whole / 60) + ':' + String(whole % 60).padStart(2, '0');
}

/** Minutes and seconds, as 18 min 12 s. */
function duration(seconds) {
  if (!isKnown(seconds)) return NOT_KNOWN;
  const whole = Math.round(seconds);
  const minutes = Math.floor(whole / 60);
  return (minutes ? minutes + '\u00a0min ' : '') + (whole % 60) + '\u00a0s';
}

/** What the altimeter shows, kept on one line where there is room. */
const unbroken = (text) => text.replaceAll(' ', '\u00a0');

/** The marks of the altimeter at whole multiples of so many feet. */
function marksEvery(briefing, feet) {
  const read = (text) => (text.startsWith('FL') ? 100 * Number(text.slice(2)) : parseInt(text, 10));
  return briefing.altimeterMarks.filter(({ text }) => read(text) % feet === 0);
}

/** What a restriction leaves in hand, in feet, in knots or both. */
function margins(restriction) {
  return [...(isKnown(restriction.marginFt) ? [signed(restriction.marginFt, 0, 'ft')] : []),
    ...(isKnown(restriction.marginKn) ? [signed(restriction.marginKn, 0, 'kn')] : [])];
}

function element(tag, attributes = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

function facts(list, pairs) {
  list.replaceChildren(
    ...pairs.map(([name, value]) => element('div', {}, element('dt', {}, name), element('dd', {}, value))));
}

/**
 * A table that stacks its cells on a narrow screen; the roles stay what they are there.
 * The first cell of a row is its heading unless told otherwise.
 */
function table(caption, headings, rows, headed = 0) {
  const isFigure = (content) => typeof content === 'string' && /^[+−]?\d[\d.:]*$/.test(content);
  const figures = headings.map((_, i) => i !== headed && rows.some((cells) => isFigure(cells[i]))
    && rows.every((cells) => isFigure(cells[i]) || cells[i] === NOT_KNOWN || cells[i] === DASH));
  const styled = (i) => (figures[i] ? { class: 'figure' } : {});
  const head = headings.map((text, i) => element('th', { scope: 'col', role: 'columnheader', ...styled(i) }, text));
  const body = rows.map((cells) => {
    const made = cells.map((content, i) => {
      const heading = i === headed;
      const cell = element(heading ? 'th' : 'td', {
        role: heading ? 'rowheader' : 'cell',
        'data-label': headings[i],
        ...(heading ? { scope: 'row' } : {}),
        ...styled(i),
      });
      cell.append(element('span', {}, ...[content].flat()));
      return cell;
    });
    return element('tr', { role: 'row' }, ...made);
  });
  return element('table', { role: 'table' },
    element('caption', {}, caption),
    element('thead', { role: 'rowgroup' }, element('tr', { role: 'row' }, ...head)),
    element('tbody', { role: 'rowgroup' }, ...body));
}

function bullets(lines) {
  return element('ul', {}, ...lines.map((line) => element('li', {}, line)));
}
