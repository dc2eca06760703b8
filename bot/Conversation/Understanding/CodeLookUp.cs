using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Glyphs;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Conversation.Understanding;

/// <summary>From what a display is said to show to the symptom that the series gives it.</summary>
internal static class CodeLookUp
{
    /// <summary>The display of a series that shows its codes by blinking.</summary>
    public const string Lamp = "lamp";

    // As it stands on the page of a series where several lamps make a code.
    private const string SeveralLamps = "lamps";

    /// <summary>The key of a code among the options; a code may be shown in two ways with two meanings.</summary>
    public static string KeyOf(DisplayCode code) => $"{code.Display}|{code.Look}";

    public static DisplayCode? ByKey(SeriesPage series, string key) =>
        series.Codes.FirstOrDefault(code => KeyOf(code) == key);

    /// <summary>Whether a series can show a code, or one that looks the same.</summary>
    public static bool Has(SeriesPage series, string code) =>
        IsLamp(code)
            ? series.Codes.Any(known => IsLamp(known.Display))
            : Near(series, code) is [{ Fit: <= GlyphFit.SameShape }, ..];

    /// <summary>
    /// Whether a series can show a code, or one that can be taken for it with a segment misread or dark.
    /// </summary>
    public static bool CanBe(SeriesPage series, string code) =>
        IsLamp(code) ? series.Codes.Any(known => IsLamp(known.Display)) : !Near(series, code).IsEmpty;

    /// <summary>The one code that is meant; null when it can be several, or the series has none such.</summary>
    public static DisplayCode? Only(SeriesPage series, string code, string? look) =>
        Has(series, code) && Fitting(series, code, look) is [var only] && IsWhole(only, look) ? only : null;

    /// <summary>
    /// Reports the symptom of a code, asks which of several is shown, or says that the series has none such.
    /// </summary>
    public static void Resolve(TurnDraft turn, SeriesPage series, string code, string? look)
    {
        ImmutableArray<DisplayCode> fits = Fitting(series, code, look);
        if (Only(series, code, look) is { } only) Report(turn, only);
        else if (fits.IsEmpty) Unknown(turn, series, IsLamp(code) ? look ?? code : code);
        else Ask(turn, series, code, fits);
    }

    // What is not of the same shape is said to be so: a segment may be misread, or dark.
    private static void Ask(TurnDraft turn, SeriesPage series, string code, ImmutableArray<DisplayCode> fits)
    {
        if (!Has(series, code))
            turn.Say(SegmentKind.Notice, "notice-code-near", Slot.Of("series", series.Title), Slot.Said("code", code));
        turn.Ask(QuestionKind.Code, code, "ask-code",
            [.. fits.Select(
                fit => new Option(KeyOf(fit), $"{fit.Display}, {fit.Look}: {fit.Means.Text}", Drawn(turn, fit))),
                turn.Option(SymptomAnswer.None, "option-none-of-these")]);
    }

    /// <summary>Drops a code that leads nowhere and asks for the complaint in words.</summary>
    public static void GiveUp(TurnDraft turn)
    {
        turn.Happen(new CodeDropped());
        turn.Ask(QuestionKind.Complaint, "", "ask-complaint-again");
    }

    public static void Report(TurnDraft turn, DisplayCode code)
    {
        Slot look = Slot.Said("look", code.Look), meaning = Slot.Of("meaning", code.Means);
        Segment understood = IsLamp(code.Display)
            ? turn.Speaker.Say(SegmentKind.Understood, "understood-lamp", look, meaning)
            : turn.Speaker.Say(SegmentKind.Understood, "understood-code", Slot.Said("code", code.Display), look,
                meaning);
        turn.Say(understood with { Pictures = [Drawn(turn, code)] });
        Symptoms.ReportCode(turn, code);
    }

    private static Picture Drawn(TurnDraft turn, DisplayCode code) => SpokenPictures.Shown(
        DisplayPicture.Of(code, new SpokenPictures(turn.Speaker)), Slot.PageOf(code.Means.Place));

    private static void Unknown(TurnDraft turn, SeriesPage series, string code)
    {
        turn.Say(SegmentKind.Notice, "notice-code-unknown", Slot.Of("series", series.Title), Slot.Said("code", code));
        GiveUp(turn);
    }

    // Codes of the same shape first; only when there is none, those one segment away, and only then those with a broken
    // digit.
    private static ImmutableArray<DisplayCode> Fitting(SeriesPage series, string code, string? look)
    {
        ImmutableArray<DisplayCode> same = Alike(series, code);
        ImmutableArray<DisplayCode> alike =
            [.. same.Where(known => look is null || known.Look == look || CanBlink(known, look))];
        // A count of blinks is exact: another count is another code.
        return alike.IsEmpty && !IsLamp(code) ? same : alike;
    }

    private static ImmutableArray<DisplayCode> Alike(SeriesPage series, string code)
    {
        if (IsLamp(code)) return [.. series.Codes.Where(known => IsLamp(known.Display))];
        ImmutableArray<FittingCode> near = Near(series, code);
        if (near.IsEmpty) return [];
        GlyphFit worst = near[0].Fit <= GlyphFit.SameShape ? GlyphFit.SameShape : near[0].Fit;
        return [.. series.Codes.Where(known => near.Any(fit => fit.Code == known.Display && fit.Fit <= worst))];
    }

    private static ImmutableArray<FittingCode> Near(SeriesPage series, string code) =>
        GlyphReader.Resolve(code, series.Codes.Where(known => !IsLamp(known.Display)).Select(known => known.Display));

    private static bool IsLamp(string display) => display is Lamp or SeveralLamps;

    private static bool CanBlink(DisplayCode known, string look) => LampPattern.TryRead(look, out LampPattern? said)
        && LampPattern.TryRead(known.Look, out LampPattern? shown) && said.CanBe(shown);

    // "Red 3" fits green 2, red 3, but the other lamp was not told.
    private static bool IsWhole(DisplayCode known, string? look) =>
        !LampPattern.TryRead(known.Look, out LampPattern? shown)
        || (LampPattern.TryRead(look, out LampPattern? said) && said.Tells(shown));
}
