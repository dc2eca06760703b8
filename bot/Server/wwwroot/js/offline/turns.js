// Turns as the page shows them, made from what the engine answers.
/**
 * @param {Kept.Taken} taken
 * @param {number} before
 */
export function shown(taken, before) {
  return {
    turnId: taken.turnId, at: new Date().toISOString(), before, last: before + taken.events.length, by: taken.by,
    said: taken.said, reply: taken.reply, away: true,
  };
}

/**
 * What the server would answer to a turn, made here.
 * @param {Told.Turn} turn
 * @param {Kept.Taken} taken
 * @returns {Told.Taken}
 */
export const answerOf = (turn, taken) => ({ turn, last: turn.last, head: taken.head, events: taken.events });

/**
 * The version of the content that a case stands on: the last one its events name.
 * @param {Kept.Turn[]} turns
 */
export function versionOf(turns) {
  const named = turns.flatMap(turn => turn.events).map(happened =>
    happened.event === 'opened' ? happened.contentVersion : happened.event === 'content-changed' ? happened.version : null);
  return named.filter(Boolean).at(-1) ?? null;
}

/** @param {Kept.Turn} turn */
export const sent = ({ turnId, events }) => ({ turnId, events });

/** @param {Kept.Case} record */
export const eventsOf = record => [...record.log, ...record.away].flatMap(turn => turn.events);

/**
 * Whether two questions ask the same, whatever their numbers.
 * @param {Told.Question | undefined} one
 * @param {Told.Question | undefined} other
 */
export const sameQuestion = (one, other) => one !== undefined && other !== undefined
  && one.kind === other.kind && one.subject === other.subject && one.text === other.text;
