namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>What the search found in a message.</summary>
/// <param name="Best">How well the best fault or symptom fits.</param>
/// <param name="Sureness">The probability of the likeliest fault among all.</param>
/// <param name="Words">How many words the message has.</param>
/// <param name="SaysEnough">It has words that could tell of a trouble.</param>
/// <param name="NamesAnotherMachine">A machine of another trade is what it is about.</param>
/// <param name="NamesPart">It names a part that a fault is about.</param>
/// <param name="AsksOnly">It asks for knowledge and complains of nothing.</param>
/// <param name="Known">The share of its words of meaning that the pages know.</param>
internal readonly record struct Hearing(
    double Best, double Sureness, int Words, bool SaysEnough, bool NamesAnotherMachine, bool NamesPart, bool AsksOnly,
    double Known);
