namespace DxAssistant.Cases;

/// <summary>Word of changed cases between programs that share a store.</summary>
/// <remarks>
/// Word may be lost when a connection is: whoever must not miss a change asks the store too, now and then.
/// </remarks>
public interface ICaseNews
{
    /// <summary>Whether word of others would be heard now.</summary>
    bool Hears { get; }

    /// <summary>Tells the others that a case was added to; does not wait for it.</summary>
    void Tell(string caseId);

    /// <summary>Hears the others until cancelled; connects anew when it was cut off.</summary>
    /// <param name="heard">
    /// Called with the name of each case that another program added to; with null when word may have been missed.
    /// </param>
    Task HearAsync(Action<string?> heard, CancellationToken cancel);
}
