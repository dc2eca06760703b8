using System.Globalization;
using System.Text;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// Writes a matrix as CSV: a row a fault; columns fault, weight, repairs, <c>symptom S</c>, <c>check C outcome O</c>.
/// </summary>
public static class MatrixWriter
{
    public const string Fault = "fault", Weight = "weight", Repairs = "repairs", Symptom = "symptom ", Check =
        "check ", Outcome = " outcome ";

    public static string Write(DependencyMatrix matrix)
    {
        StringBuilder text = new(CommaSeparated.Row(
        [
            Fault, Weight, Repairs,
            .. matrix.Symptoms.Select(symptom => Symptom + symptom.Id),
            .. matrix.Checks.SelectMany(check =>
                check.Outcomes.Select(outcome => Check + check.Id + Outcome + outcome)),
        ]));
        foreach (MatrixFault fault in matrix.Faults)
            text.Append(CommaSeparated.Row(
            [
                fault.Id, Number(fault.Weight), string.Join(' ', fault.Repairs),
                .. matrix.Symptoms.Select(symptom =>
                    symptom.Causes.TryGetValue(fault.Id, out double probability) ? Number(probability) : ""),
                .. matrix.Checks.SelectMany(check => RoundedShares.Of(check.Rows[fault.Id]).Select(Number)),
            ]));
        return text.ToString();
    }

    // As many digits as rounded shares have.
    private static string Number(double value) => value.ToString("0.#########", CultureInfo.InvariantCulture);
}
