using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>All rules, in the order of their names.</summary>
internal static class ContentRules
{
    public static ImmutableArray<IContentRule> All { get; } =
    [
        new BadFrontMatter(),
        new BrokenLink(),
        new DuplicateId(),
        new EmptyCell(),
        new HtmlInPage(),
        new LikelihoodsDoNotSum(),
        new MissingField(),
        new MissingHeading(),
        new MissingPage(),
        new MissingSummary(),
        new MissingTitle(),
        new RepeatedHeading(),
        new UnevenRow(),
        new UnknownField(),
        new UnknownHeading(),
        new UnknownId(),
        new UnknownKind(),
        new UnknownWord(),
        new UnreachablePage(),
        new UnreadableCharacter(),
        new UnreadablePage(),
        new WrongContent(),
        new WrongFieldValue(),
        new WrongHeadingLevel(),
        new WrongLink(),
        new WrongPlace(),
        new WrongTableHeads(),
    ];
}
