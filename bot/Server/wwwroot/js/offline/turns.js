// Turns as the page shows them, made from what the engine answers.
export function shown(taken, before) {
  return {
    turnId: taken.turnId, at: new Date().toISOString(), before, last: before + taken.events.length, by: taken.by,
    said: taken.said, reply: taken.reply, away: true,
  };
}

/** What the server would answer to a turn, made here. */
export const answerOf = (turn, taken) => ({ turn, last: turn.last, head: taken.head, events: taken.events });

/** The version of the content that a case stands on: the last one its events name. */
export function versionOf(turns) {
  const named = turns.flatMap(turn => turn.events).map(happened =>
    happened.event === 'opened' ? happened.contentVersion : happened.event === 'content-changed' ? happened.version : null);
  return named.filter(Boolean).at(-1) ?? null;
}

export const sent = ({ turnId, events }) => ({ turnId, events });

export const eventsOf = record => [...record.log, ...record.away].flatMap(turn => turn.events);

/** Whether two questions ask the same, whatever their numbers. */
export const sameQuestion = (one, other) => Boolean(one && other)
  && one.kind === other.kind && one.subject === other.subject && one.text === other.text;
