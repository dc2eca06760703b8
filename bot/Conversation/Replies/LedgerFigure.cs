namespace DxAssistant.Conversation.Replies;

/// <summary>One piece of evidence for or against a fault.</summary>
/// <param name="Kind">
/// "symptom", "check", "repair" (it did not cure), "mended" (it put its fault right, and another shows) or "earlier"
/// (it was made some time ago).
/// </param>
/// <param name="Id">Of the page.</param>
/// <param name="Weight">
/// The weight of evidence: natural logarithm of the factor on the fault's odds; null when it rules the fault out, or
/// every other.
/// </param>
public sealed record LedgerFigure(string Kind, string Id, double? Weight);
