namespace DxAssistant.Cases.Accounts;

/// <summary>
/// Which account is whose at the company. A company may give a person's name to somebody else one day; what it calls
/// the person among its own it never gives away.
/// </summary>
/// <remarks>
/// Source, from memory: OpenID Connect Core 1.0, 5.7 (issuer and subject together are all that may be relied on).
/// </remarks>
public sealed class CompanyBook
{
    private readonly BookTables tables;

    internal CompanyBook(BookTables tables) => this.tables = tables;

    /// <summary>The account of a person of the company; null while nobody has said.</summary>
    /// <param name="subject">Issuer and subject.</param>
    public string? AccountOf(string subject) => tables.Rows(
        "SELECT account FROM company_person WHERE subject = @subject", row => row.GetString(0), ("subject", subject))
        .FirstOrDefault();

    /// <summary>Makes an account that of a person of the company.</summary>
    /// <returns>False when the account or the person has another already.</returns>
    public bool Bind(string subject, string account) =>
        tables.Run("INSERT INTO company_person VALUES (@subject, @account) ON CONFLICT DO NOTHING",
            ("subject", subject), ("account", account)) == 1;

    /// <summary>Makes an account nobody's again, so that the next of that name may have it.</summary>
    public void Forget(string account) =>
        tables.Run("DELETE FROM company_person WHERE account = @account", ("account", account));
}
