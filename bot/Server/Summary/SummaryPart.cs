using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Server.Summary;

/// <summary>One fault's walk, from symptom to verified repair.</summary>
/// <param name="Unit">The series; null while it is not known. A new start may be for another one.</param>
/// <param name="Shows">The symptoms; empty when none was told.</param>
/// <param name="Said">The words in which they were told.</param>
/// <param name="LeftOut">Checks that were left out, with the reason.</param>
/// <param name="Proven">The fault whose repair was verified; null while there is none.</param>
/// <param name="InQuestion">The faults left in question where the part ended without a proof; else empty.</param>
/// <param name="Narrowing">How the faults in question narrowed; null while nothing has.</param>
/// <param name="Ended">How this part ended; null while it goes on.</param>
internal sealed record SummaryPart(
    string? Unit,
    ImmutableArray<string> Shows,
    ImmutableArray<string> Said,
    ImmutableArray<SummaryCheck> Checks,
    ImmutableArray<SummaryLeftOut> LeftOut,
    ImmutableArray<SummaryRepair> Repairs,
    string? Proven,
    ImmutableArray<string> InQuestion,
    string? Ended,
    Picture? Narrowing);
