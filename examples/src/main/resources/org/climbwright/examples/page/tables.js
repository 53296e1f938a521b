// The tables and lists below the picture.

function whatByWhen(briefing) {
  const rows = briefing.whatByWhen.map((row) => [
    String(row.number),
    [element('strong', {}, { do: 'Do: ', expect: 'Expect: ', check: 'Check: ' }[row.kind] || ''), row.what],
    unbroken((row.latest || row).altitudeText),
    clock((row.latest || row).timeS),
    number((row.latest || row).distanceNm, 1),
    row.latest ? `${unbroken(row.altitudeText)}, ${clock(row.timeS)}, ${number(row.distanceNm, 1, 'NM')}` : '',
    row.figure || '',
    row.reason || '',
  ]);
  return table('What to do, to expect and to check, in the order in which it is due; the numbers are those of the picture. By: the point by which to act, or where it comes; “comes at”: where that is later. Altitudes as on the altimeter: on QNH up to the transition altitude, above it on 1013.25\u00a0hPa',
    ['No.', 'What', 'By altitude', 'By min:s', 'By NM', 'Comes at', 'Figure', 'Why'], rows);
}

function checkCard(briefing) {
  const rows = briefing.checkCard.map((row) => [
    row.name,
    unbroken(row.altitudeText),
    clock(row.timeS) + (isKnown(row.timeToleranceS) ? `\u00a0±\u00a0${number(row.timeToleranceS, 0, 's')}` : ''),
    number(row.distanceNm, 1),
    number(row.cabinAltitudeFt),
    signed(row.cabinRateFtPerMin),
    number(row.differentialPsi, 2),
    number(row.fuelKg),
    '',
  ]);
  return table('What to compare on the way up; the time may be off by as much as 1,000 kg more, air 10 K warmer or 20 kn more on the nose would make it', ['Check', 'Altitude', 'Time, min:s', 'Distance, NM', 'Cabin altitude, ft',
    'Cabin rate, ft/min', 'Differential, psi', 'Fuel used, kg', 'Seen'], rows);
}

function changes(briefing) {
  return table('What a change makes of this climb',
    ['Change', 'Time, s', 'Fuel, kg', 'Distance, NM', 'Compared at, pressure altitude, ft'],
    briefing.changes.map((row) => [
      row.change + (row.endsLower ? ' (ends lower)' : ''),
      signed(row.moreTimeS), signed(row.moreFuelKg), signed(row.moreDistanceNm, 1), number(row.comparedAtFt)]));
}

function restrictions(briefing) {
  return table('Restrictions, with the margin in hand; – where one takes no gradient or rate, or it is not known',
    ['Point', 'Distance, NM', 'Required', 'Predicted', 'Margin', 'Gradient it takes, ft/NM', 'Rate it takes, ft/min', 'Answer', 'Why'],
    briefing.restrictions.map((row) => [
      row.name, number(row.distanceNm, 1), row.required, isKnown(row.predictedText) ? unbroken(row.predictedText) : NOT_KNOWN,
      margins(row).join(', ') || NOT_KNOWN,
      isKnown(row.requiredGradientFtPerNm) ? number(row.requiredGradientFtPerNm) : DASH,
      isKnown(row.requiredRateFtPerMin) ? number(row.requiredRateFtPerMin) : DASH,
      row.verdict, row.reasons.join('; ')]));
}

function icing(briefing) {
  const kinds = [['icingConditions', 'conditions'], ['icingNotKnown', NOT_KNOWN], ['icingColderThanTheRule', 'colder than the rule']];
  const rows = kinds.flatMap(([field, answer]) => briefing[field].map((span) => [
    span.part, answer, span.rule, altitudes(span),
    `${clock(span.entryTimeS)} to ${clock(span.exitTimeS)}`,
    span.protectionOnBeforeClimb ? 'before the climb' : unbroken(span.protectionOnByAltitudeText),
    field === 'icingConditions' ? off(span) : DASH,
    span.reason]));
  return table('Where the climb meets a rule for icing conditions, with altitudes as on the altimeter; – where the rule is not known to be met',
    ['Part', 'Answer', 'Rule', 'Altitude', 'Time, min:s', 'Protection on by', 'Off by the rule not before', 'Why'], rows);
}

const altitudes = (span) => `${unbroken(span.fromAltitudeText)} to ${unbroken(span.toAltitudeText)}`;

const off = (span) => (isKnown(span.protectionOffAfterAltitudeText)
  ? unbroken(span.protectionOffAfterAltitudeText) : 'still on where the climb ends');

function cabin(briefing) {
  return table('The cabin, by its schedule and limits',
    ['Pressure altitude, ft', 'Time, min:s', 'Cabin altitude, ft', 'Cabin rate, ft/min', 'Differential, psi', 'Most scheduled, psi', 'Relief, psi', 'Held by'],
    briefing.cabinChecks.map((row) => [
      number(row.atFt), clock(row.timeS), number(row.cabinAltitudeFt), signed(row.cabinRateFtPerMin), number(row.differentialPsi, 2),
      number(row.maxDifferentialPsi, 2), number(row.reliefDifferentialPsi, 2), row.boundBy]));
}

function freezing(briefing) {
  return table('Where the static air temperature is 0 °C',
    ['Pressure altitude, ft', 'Geopotential altitude, ft', 'Above it'],
    briefing.freezingLevels.map((row) => [
      number(row.pressureAltitudeFt), number(row.geopotentialAltitudeFt), row.direction === 'falling' ? 'colder' : 'warmer']));
}

function inversions(briefing) {
  return table('Where the air is warmer above than below', ['Base, pressure altitude, ft', 'Top, pressure altitude, ft', 'Warmer above by, K'],
    briefing.inversions.map((row) => [number(row.basePressureAltitudeFt), number(row.topPressureAltitudeFt), number(row.warmerK, 1)]));
}

function levelOff(briefing) {
  const plan = briefing.levelOff;
  const list = element('dl', { class: 'facts' });
  facts(list, [
    ['Rule', plan.rule], ['Lead', plan.lead],
    ['Rate on arrival', number(plan.arrivalRateFtPerMin, 0, 'ft/min')],
    ['Rate in force', number(plan.rateInForceFtPerMin, 0, 'ft/min')],
    ['Reducing begins', number(plan.beginsReducingFtToGo, 0, 'ft') + ' to go'],
    ['Levelling begins', number(plan.beginsLevellingFtToGo, 0, 'ft') + ' to go'],
    ['Costs', number(plan.costS, 0, 's')]]);
  return [list, ...(plan.remarks.length ? [bullets(plan.remarks)] : [])];
}

const CLOUD_WORDS = {
  'tops by clearance': 'topped by the clearance given or more',
  'tops by less': 'topped by less than the clearance given',
  'does not top': 'not topped',
  'no verdict': 'no clearance given: margins and no answer',
};

function cloudAhead(briefing) {
  const top = briefing.cloudTop;
  const list = element('dl', { class: 'facts' });
  facts(list, [
    ['Answer', CLOUD_WORDS[top.answer] || top.answer],
    ['At the near edge', signed(top.nearEdgeMarginFt, 0, 'ft')], ['Least there', signed(top.nearEdgeLeastMarginFt, 0, 'ft')],
    ['Over the cloud', signed(top.overCloudMarginFt, 0, 'ft')], ['Least over it', signed(top.overCloudLeastMarginFt, 0, 'ft')]]);
  return [list, bullets(top.reasons)];
}

function turbulence(briefing) {
  const found = briefing.turbulence;
  const spans = found.seatBelts.length
    ? [table('Where there is reason for the seat-belt sign, with altitudes as on the altimeter', ['Altitude', 'Time, min:s', 'Distance, NM', 'Why'],
      found.seatBelts.map((span) => [altitudes(span), `${clock(span.entryTimeS)} to ${clock(span.exitTimeS)}`,
        `${number(span.entryDistanceNm, 1)} to ${number(span.exitDistanceNm, 1)}`, span.reasons.join('; ')]))] : [];
  return [...spans, element('p', {}, found.advice)];
}
