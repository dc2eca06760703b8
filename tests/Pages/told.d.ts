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
    | 'contradiction' | 'proof' | 'left-out' | 'doubt' | 'gone' | 'repair' | 'verify' | 'left-over' | 'closed' | 'language';
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
  type Turn = { turnId: string; at: string; before: number; last: number; by: string; said?: string; reply: Reply; away?: boolean; request?: { turnId: string } & Said.Body };
  type Head = { unit?: string; shows?: string; who?: string; stands?: string; ended?: string };
  type Hand = { name: string; as: string };
  type Case = {
    id: string; openedAt: string; contentVersion?: string; last: number; head: Head; turns: Turn[]; hands?: Hand[];
  };
  type Taken = { turn: Turn; last: number; head: Head; events: Kept.Happened[] };
}

/** What the page says to the server: words, or an answer to the open question. */
declare namespace Said {
  type Chosen = { question: string; choice: string };
  type Filled = { question: string; readings: Record<string, string> };
  type Body = { text: string; question?: string } | { answer: Chosen | Filled | { command: string } };
}

/** What this device keeps to go on without signal. */
declare namespace Kept {
  type Happened = { event: string; contentVersion?: string; version?: string; by?: string; [more: string]: unknown };
  /** A turn as its events; `request` is what the person sent, of turns that wait. */
  type Turn = { turnId: string; events: Happened[]; request?: { turnId: string } & Said.Body };
  type Part = { version: string; root: string; files: string[]; bytes: number };
  type Kit = { engine?: Part; pack?: Part };
  type Shelved = { name: string; version: string; root: string; bytes: number; at: number };
  /** A case: `basis` and `log` are what the server has of it, `away` waits, `left` was handed back, `view` is what is shown. */
  type Case = { id: string; basis: number; log: Turn[]; away: Turn[]; left: string[]; view: Told.Case | null; at?: number };
  type Whole = Case & { view: Told.Case };
  /** What the engine answers to a turn. */
  type Taken = { turnId: string; by: string; said?: string; reply: Told.Reply; head: Told.Head; version: string; events: Happened[] };
  type Engine = { Load(pack: Uint8Array): string; Warm(): void; Begin(log: string): void; Take(turn: string): string };
}

/** What the pages beside the sheet are told. */
declare namespace Told {
  type Listed = { id: string; title?: string; lastAt: string; waiting?: number };
  type Judged = { verdict: string; healthy?: boolean };
  type Made = { title: string; works?: boolean; triedAt?: string; beside?: string };
  type SummedCheck = { title: string; answer: string; at: string; figures?: Figures; pictures: Picture[] };
  type Part = {
    unit?: string; shows: string[]; said: string[]; proven?: string; ended?: string; checks: SummedCheck[]; narrowing?: Picture;
    leftOut: { title: string; reason: string }[]; inQuestion: string[]; repairs: Made[];
  };
  type Summary = { id: string; openedAt: string; lastAt: string; versions: string[]; head: Head; parts: Part[] };

  type Plate = { model?: string; serial?: string; site?: string; installed?: string; bought?: string; registered?: string };
  type Evidence = { title: string; demanded: boolean; at: string; answer: string; verdict?: string; healthy?: boolean; readings: Reading[]; expected: string[] };
  type Term = { kind: string; on: string; page: string; months?: number; until?: string };
  type Coverage = { part: string; labour: string; labourMinutes: number; reasons: Term[] };
  type Photo = { shows: string; serial?: string; at: string; hash: string };
  type ClaimSheet = {
    seriesTitle: string; failed: string; faultTitle: string; part: string; repairTitle?: string; works: boolean; belief: number;
    needed: number; wants: string; evidence: Evidence[]; coverage: Coverage; photos?: Photo[];
    leftPossible?: { fault: string; title: string; belief: number }[];
  };
  type ClaimState = 'draft' | 'ready' | 'submitted' | 'approved' | 'declined' | 'returned';
  type ClaimAct = { claim: string; override?: string; why?: string };
  type Claim = {
    id: string; case: string; state: ClaimState; unit: Plate; sheet?: ClaimSheet; wanting: string[]; override?: string; line?: string;
    log: { at: string; by: string; event: ClaimAct }[];
  };

  type By = { at: string; by: string };
  type JobUnit = By & { number: number; series?: string } & Plate;
  type JobPerson = By & { part: string; name: string; phone?: string; number?: number; company?: string };
  type JobPhoto = By & { hash: string; shows: string; unit?: number; name?: string; gone?: boolean; bytes?: number; type?: string };
  type JobFacts = {
    atHand: number; units: JobUnit[]; people: JobPerson[]; notes: (By & { text: string })[]; photos: JobPhoto[]; hands: Hand[];
    visits: { number: number; begun: string; ended?: string; by: string }[]; change?: By & { turn: string; what: string };
  };
  /** A call that is put aside, to be taken up again. */
  type Slip = { case: string; caller?: string; phone?: string; due?: string };
  type Series = { id: string; title: string; serial?: string };
  type Job = { case: string; last: number; ended?: string; said?: string; series: Series[]; job: JobFacts };
}
