namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>The names by which pages, outcomes and phrases are known.</summary>
internal static class Id
{
    /// <summary>How to write one.</summary>
    public const string Help = "use small letters, digits and single hyphens";

    public static bool IsId(string text) => text.Length > 0 && text.Split('-').All(IsPart);

    private static bool IsPart(string part) =>
        part.Length > 0 && part.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c));
}
