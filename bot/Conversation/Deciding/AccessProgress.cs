namespace DxAssistant.Conversation.Deciding;

/// <summary>How far the way to an access state is.</summary>
internal enum AccessProgress
{
    /// <summary>The unit stands so.</summary>
    There,

    /// <summary>The next step was asked.</summary>
    Asked,

    /// <summary>This person cannot bring the unit there from where it stands.</summary>
    NoWay,
}
