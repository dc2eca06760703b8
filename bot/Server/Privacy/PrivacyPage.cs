using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Server.Privacy;

/// <summary>What the page on personal data says; all of it from the phrase file.</summary>
/// <param name="Kinds">What is kept, one by one.</param>
/// <param name="Rights">What can be done about it.</param>
internal sealed record PrivacyPage(string Lead, ImmutableArray<PrivacyKind> Kinds, ImmutableArray<string> Rights)
{
    /// <param name="days">After how many days words are removed; null for never.</param>
    public static PrivacyPage Of(PhraseBook phrases, int? days)
    {
        string words = days is { } after
            ? phrases.Template("privacy-for-days")
                .Replace("{days}", after.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
            : phrases.Template("privacy-until-removed");
        PrivacyKind Kind(string what, string why, string howLong) =>
            new(phrases.Template(what), phrases.Template(why), howLong);
        return new PrivacyPage(
            phrases.Template("privacy-lead"),
            [
                Kind("privacy-words", "privacy-words-why", words),
                Kind("privacy-people", "privacy-people-why", words),
                Kind("privacy-calls", "privacy-calls-why", words),
                Kind("privacy-unit", "privacy-unit-why", phrases.Template("privacy-with-record")),
                Kind("privacy-claims", "privacy-claims-why", phrases.Template("privacy-with-claim")),
                Kind("privacy-accounts", "privacy-accounts-why", phrases.Template("privacy-with-account")),
                Kind("privacy-device", "privacy-device-why", phrases.Template("privacy-on-device")),
            ],
            [phrases.Template("privacy-give-out"), phrases.Template("privacy-remove"),
                phrases.Template("privacy-stays"), phrases.Template("privacy-copies")]);
    }
}
