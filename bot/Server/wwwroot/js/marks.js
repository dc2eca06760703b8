// Our own drawings, 24 by 24, drawn with the pen of the text around them.
/** @type {Record<string, string[]>} */
const shapes = {
  caution: ['M12 3 L22 21 L2 21 Z', 'M12 9.5 V15', 'M12 17.6 V18.4'],
  stop: ['M8 2.5 H16 L21.5 8 V16 L16 21.5 H8 L2.5 16 V8 Z', 'M7 12 H17'],
  within: ['M3 6 H21', 'M3 18 H21', 'M8 12 L11 15 L16.5 9'],
  low: ['M3 6 H21', 'M12 9.5 V20', 'M7.5 15.5 L12 20 L16.5 15.5'],
  high: ['M3 18 H21', 'M12 14.5 V4', 'M7.5 8.5 L12 4 L16.5 8.5'],
  absent: ['M3 6 H21', 'M3 20 H21', 'M9 11 L15 17', 'M15 11 L9 17'],
  unequal: ['M4 9 H20', 'M4 15 H20', 'M16 4 L8 20'],
  'open circuit': ['M2 15 H8', 'M16 15 H22', 'M8 15 L15.5 8'],
  'short circuit': ['M2 12 H7 L10 5 L14 19 L17 12 H22'],
  closed: ['M2 14 H22', 'M8 14 V11', 'M16 14 V11'],
  unsettled: ['M3 10 Q7.5 6 12 10 T21 10', 'M3 16 Q7.5 12 12 16 T21 16'],
  note: ['M12 10.5 V18', 'M12 6 V7'],
  look: ['M2.5 12 Q12 3 21.5 12 Q12 21 2.5 12 Z', 'M12 9.5 V14.5'],
  meter: ['M5 3 H19 V21 H5 Z', 'M8 10 A4.5 4.5 0 0 1 16 10', 'M12 10.5 L14.5 7.5', 'M9 16 V18', 'M15 16 V18'],
  lock: ['M5 11 H19 V21 H5 Z', 'M8 11 V7.5 A4 4 0 0 1 16 7.5 V11'],
  repair: ['M4 20 L13 11', 'M13 11 A5 5 0 0 1 20 5 L16.5 8.5 L18 10 L21 7 A5 5 0 0 1 13 11'],
  pen: ['M4 20 L5.5 15 L16 4.5 L19.5 8 L9 18.5 Z', 'M14 6.5 L17.5 10'],
  listen: ['M9 6 A3 3 0 0 1 15 6 V11 A3 3 0 0 1 9 11 Z', 'M5.5 11 A6.5 6.5 0 0 0 18.5 11', 'M12 17.5 V21.5'],
  power: ['M12 3 V11', 'M7 6.5 A7 7 0 1 0 17 6.5'],
  end: ['M3 9 H21', 'M3 13 H21'],
};

/** @type {Record<string, string>} */
const ofQuestion = {
  complaint: 'pen', series: 'pen', symptom: 'pen', code: 'look', role: 'pen', access: 'lock', check: 'look', meaning: 'meter',
  contradiction: 'unequal', proof: 'look', 'left-out': 'look', doubt: 'look', gone: 'power', repair: 'repair', verify: 'power', 'left-over': 'power', told: 'pen', first: 'pen', closed: 'end',
};

/** @param {string} name */
export function mark(name, extra = '') {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('viewBox', '0 0 24 24');
  svg.setAttribute('class', `mark ${extra}`);
  svg.setAttribute('aria-hidden', 'true');
  for (const d of shapes[name] ?? shapes.note) {
    const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    path.setAttribute('d', d);
    svg.append(path);
  }
  return svg;
}

/** @param {string} name */
export const hasMark = name => name in shapes;

/** @param {Told.Question} question */
export function markOf(question) {
  if (question.kind === 'check' && question.fields.length > 0) return 'meter';
  return ofQuestion[question.kind] ?? 'pen';
}
