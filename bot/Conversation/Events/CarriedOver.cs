using System.Collections.Immutable;

namespace DxAssistant.Conversation.Events;

/// <summary>
/// What goes over from the search for one fault into that for another which was seen beside it. All that was told goes
/// with it.
/// </summary>
/// <param name="Check">The check that showed the other fault.</param>
/// <param name="Results">
/// The checks whose results hold still, since the repair of the first fault did not change what they look at.
/// </param>
public sealed record CarriedOver(string Check, ImmutableArray<string> Results);
