using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Browser.Tests;

/// <summary>The replies of the script.</summary>
internal static class ScriptPages
{
    public static readonly Segment Stale = Say(
        SegmentKind.Notice,
        "That question was answered already, perhaps in another window. This is where the case stands.");

    public static readonly Segment Why = Say(
        SegmentKind.Why, "Compressor windings takes about 12 minutes with the way there.");

    private static readonly ImmutableArray<CommandWord> AtCheck =
        [CommandWord.Back, CommandWord.Why, CommandWord.Skip, CommandWord.Unsure, CommandWord.Cannot,
            CommandWord.StartOver];

    private static readonly ImmutableArray<BeliefLine> Belief =
    [
        new("compressor-winding", "Compressor winding failed", 0.612),
        new("power-module", "Power module failed", 0.241),
        new("plug", "Compressor plug loose", 0.143), new("none-of-these", "None of these, or intermittent", 0.004),
    ];

    public static Reply Opening(int turns) => Ask(turns, QuestionKind.Complaint, "", "What is wrong?", [], [],
        Say(SegmentKind.Notice, "Tell me what the unit does, or what its display shows."));

    public static Reply Again(OpenQuestion open, int turns, Segment first) => Ask(
        turns, open.Kind, open.Subject, open.Text, open.Options, open.Fields, first);

    public static Reply Step(int turns, int step) => Ask(
        turns, QuestionKind.Access, step.ToString(CultureInfo.InvariantCulture), "Is this done?", [new("done", "Done")],
        [],
        step == 1
            ? [Say(SegmentKind.Understood, "I take it as: the compressor does not start."),
               Lead("access-lead", "Bring the unit to this state first: Isolated, discharged and open."),
               Caution("live-mains",
                   "Mains voltage through the body can stop the heart. The unit can be live although it stands still."),
               Caution("live-mains", "Switch off at the isolator, lock it with your own lock and keep the key."),
               Caution("live-mains", "Prove the meter live, measure dead, prove the meter again."),
               Caution("stored-charge",
                   "The capacitors of the board hold a charge that can kill, minutes after the supply is off."),
               Say(SegmentKind.Instruction,
                   "Step 1 of 2. Switch off at the isolator, lock it with your own lock and hang your tag.")]
            : [Say(SegmentKind.Instruction, "Step 2 of 2. Prove your meter on a known live source.")]);

    public static Reply Windings(int turns) => Ask(
        turns, QuestionKind.Check, "winding-balance", "What do the three windings read?",
        [new("equal", "All three equal"), new("unequal", "One differs"), new("open", "One or more open"),
            new("short", "Near zero")],
        [new("U–V", "Ω", "Leads on U and V, compressor plug off", null), new("V–W", "Ω", "Leads on V and W", null),
         new("U–W", "Ω", "Leads on U and W", null)],
        Say(SegmentKind.Notice, "The unit is now: Isolated, discharged and open."),
        Lead("check-lead", "Next: Compressor windings."),
        Caution("stored-charge",
            "The capacitors of the board hold a charge that can kill, minutes after the supply is off."),
        Say(SegmentKind.Instruction, "Pull the compressor plug."),
        Say(SegmentKind.Instruction,
            "Measure between each pair of pins on the compressor side, and subtract what the leads read when held "
                + "together."));

    public static Reply Found(int turns) => Ask(
        turns, QuestionKind.Repair, "replace-compressor", "Is the repair done?", [new("done", "Repair done")], [],
        Verdict("The compressor windings read U–V 1.2 Ω, V–W 1.21 Ω, U–W 0.62 Ω. They should be equal and are not.",
            "unequal", false,
            ["1.17 Ω to 1.25 Ω"], "U–W"),
        Verdict("The supply reads 216 V. That is too close to call.", "too close to call", null, ["207 V to 253 V"],
            null),
        Verdict("The room sensor reads 10.1 kΩ. That is as it should be.", "within", true, ["9.6 kΩ to 10.4 kΩ"], null),
        Say(SegmentKind.Conclusion, "Found: Compressor winding failed, 97 % sure."),
        Say(SegmentKind.Refusal, "A protection is not to be bridged. Measure it instead; here is how."),
        Lead("repair-lead", "Repair: Replace the compressor."),
        Say(SegmentKind.Repair, "Recover the refrigerant; do not vent it."),
        Say(SegmentKind.Repair, "Replace the compressor and the drier."));

    public static Reply Verify(int turns) => Ask(
        turns, QuestionKind.Verify, "replace-compressor", "Does the compressor start and run for ten minutes?",
        [new("yes", "Yes, it works"), new("no", "No, still wrong")], [], Lead("verify-lead", "Now try the unit."));

    public static Reply Closed(int turns) => Ask(
        turns, QuestionKind.Closed, "", "Do you want to start a new case?", [new("new", "Start a new case")], [],
        Say(SegmentKind.Conclusion, "The case is closed. The sheet holds every reading and verdict."));

    private static Reply Ask(
        int turns, QuestionKind kind, string subject, string text, ImmutableArray<Option> options,
        ImmutableArray<Field> fields,
        params ImmutableArray<Segment> said)
    {
        var question = Say(SegmentKind.Question, text);
        var open = new OpenQuestion($"q{turns}", kind, subject, text, question.From, options, fields, AtCheck);
        bool walking = kind is not (QuestionKind.Complaint or QuestionKind.Closed);
        return new Reply(said.Add(question), open, walking ? Belief : [], walking ? "closed-running" : null);
    }

    private static Segment Say(SegmentKind kind, string text) =>
        new(kind, text, [new Provenance.Page("script.md", "Script")]);

    private static Segment Lead(string phrase, string text) =>
        new(SegmentKind.Notice, text, [new Provenance.Phrase(phrase)]);

    private static Segment Caution(string page, string text) =>
        new(SegmentKind.Caution, text, [new Provenance.Page($"cautions/{page}.md", "Danger")]);

    private static Segment Verdict(
        string text, string verdict, bool? healthy, ImmutableArray<string> expected, string? odd) => new(
        SegmentKind.Verdict, text,
        [new Provenance.Phrase("verdict-unequal"),
            new Provenance.Calculation("winding-balance", "Common practice, no source")],
        new VerdictFigures(verdict, healthy,
            odd is null
                ? [new("", "216 V", false)]
                : [new("U–V", "1.2 Ω", false), new("V–W", "1.21 Ω", false), new("U–W", "0.62 Ω", true)],
            expected, ["mean = (1.2 + 1.21 + 0.62) / 3 = 1.01 Ω", "largest deviation = |0.62 − 1.01| / 1.01 = 38.6 %",
                "limit = 5 %"],
            "unequal when the deviation less its uncertainty is over the limit", "Common practice, no source"));
}
