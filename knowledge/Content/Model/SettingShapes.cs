using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>All settings there are, with the values they have where no page says otherwise.</summary>
internal static class SettingShapes
{
    public const string Number = "number";
    private const string Probability = "probability", Bits = "bits", BitsAMinute = "bits a minute", Times =
        "times", Fit = "fit";

    public static SettingShape Found { get; } = new("fault found", 0.95, 0.5, 0.9999, Probability);
    public static SettingShape NamedBeside { get; } =
        new("second fault with the repair named", 0.05, 0, 1, Probability);
    public static SettingShape Suspected { get; } = new("suspect named at the end", 0.03, 0, 1, Probability);
    public static SettingShape Suspects { get; } = new("suspects named at the end", 3, 1, 10, Number);
    public static SettingShape Booked { get; } = new("suspects booked, not watched", 0.3, 0, 1, Probability);
    public static SettingShape BeginWith { get; } = new("checks named to begin with", 3, 1, 10, Number);
    public static SettingShape NoneLeads { get; } = new("none of these leads", 0.5, 0.1, 1, Probability);
    public static SettingShape TriedFirst { get; } = new("own work tried before a visit", 0.02, 0, 1, Probability);
    public static SettingShape InEarnest { get; } = new("fault in earnest question", 0.02, 0, 0.5, Probability);
    public static SettingShape Foregone { get; } = new("answer all but known", 0.95, 0.5, 1, Probability);
    public static SettingShape Contradiction { get; } = new("results contradict", 0.001, 0, 0.1, Fit);
    public static SettingShape Chance { get; } = new("results contradict by chance", 0.05, 0, 1, Probability);
    public static SettingShape OddOne { get; } = new("odd result named", 3, 1, 1000, Times);
    public static SettingShape LeftOut { get; } = new("checks left out before stopping is offered", 3, 1, 20, Number);
    public static SettingShape WorthAQuestion { get; } = new("doubt worth a question", 0.1, 0, 5, Bits);
    public static SettingShape WorthAMinute { get; } = new("doubt worth a minute", 0.035, 0, 5, BitsAMinute);
    public static SettingShape DoubtTrusted { get; } = new("told with doubt is right", 0.7, 0.5, 1, Probability);
    public static SettingShape Misread { get; } = new("reading misread", 0.005, 0, 0.1, Probability);
    public static SettingShape NotHeld { get; } = new("work that does not hold", 0.1, 0, 0.5, Probability);

    public static SettingShape Shows { get; } = new("fault shown by a check", 8, 2, 1000, Times);

    public static SettingShape Beside { get; } = new("fault seen beside another", 5, 2, 1000, Times);

    public static ImmutableArray<SettingShape> All { get; } =
    [
        Found, NamedBeside, Suspected, Suspects, Booked, BeginWith, NoneLeads, TriedFirst, InEarnest, Foregone,
        Contradiction, Chance, OddOne,
        LeftOut, WorthAQuestion, WorthAMinute, DoubtTrusted, Misread, NotHeld, Shows, Beside,
    ];
}
