// What the server tells the pages, and the engine on the device alike. A test holds it to what they really send.

declare namespace Told {
  type Origin = { origin: 'page'; path: string; heading: string } | { origin: 'phrase'; id: string }
    | { origin: 'calculation'; name: string; source: string } | { origin: 'person' };
  type Picture = { id: string; kind: string; svg: string; text: string; from: Origin[] };

  type Reading = { label: string; value: string; odd: boolean };
  type Figures = {
    verdict: string; healthy?: boolean; readings: Reading[]; expected: string[]; working: string[]; rule: string; source: string;
  };
  type WhyAnswer = { outcome: string; probability: number; fault: string; share: number; next?: string; minutes?: number };
  type Why = {
    step: string; minutes: number; lowerBound: number; runnerUp?: string; runnerUpMinutes?: number; answers: WhyAnswer[];
  };
  type SegmentKind = 'understood' | 'notice' | 'verdict' | 'caution' | 'instruction' | 'question' | 'why' | 'conclusion'
    | 'repair' | 'advice' | 'refusal';
  type Segment = {
    kind: SegmentKind; text: string; from: Origin[]; verdict?: Figures; pictures?: Picture[]; why?: Why; language?: string;
  };

  type QuestionKind = 'complaint' | 'series' | 'role' | 'symptom' | 'code' | 'told' | 'first' | 'access' | 'check' | 'meaning'
    | 'contradiction' | 'repair' | 'verify' | 'left-over' | 'closed' | 'language';
  type Command = 'back' | 'why' | 'skip' | 'cannot' | 'unsure' | 'help' | 'again' | 'start-over';
  type Field = { label: string; unit: string; where: string; given?: string };
  type Answer = { key: string; label: string; picture?: Picture };
  type Question = {
    id: string; kind: QuestionKind; subject: string; text: string; from: Origin[]; options: Answer[]; fields: Field[];
    commands: Command[];
  };

  /** A fault in question; `probability` lies between 0 and 1. */
  type Belief = { fault: string; title: string; probability: number };
  type Reply = { segments: Segment[]; question?: Question; belief: Belief[]; access?: string };

  /** `before` and `last` count events. Without `said` it is the opening; `away` are turns that the server has not seen. */
  type Turn = { turnId: string; at: string; before: number; last: number; by: string; said?: string; reply: Reply; away?: boolean };
  type Head = { unit?: string; shows?: string; who?: string; stands?: string; ended?: string };
  type Hand = { name: string; as: string };
  type Case = {
    id: string; openedAt: string; contentVersion?: string; last: number; head: Head; turns: Turn[]; hands?: Hand[];
  };
  type Taken = { turn: Turn; last: number; head: Head; events: any[] };
}

/** What the page says to the server: words, or an answer to the open question. */
declare namespace Said {
  type Chosen = { question: string; choice: string };
  type Filled = { question: string; readings: Record<string, string> };
  type Body = { text: string; question?: string } | { answer: Chosen | Filled | { command: string } };
}
