namespace AdaptiveCards;

/// <summary>The one type that <c>Microsoft.Bot.Schema</c> names; never made here.</summary>
public sealed class AdaptiveCard;
