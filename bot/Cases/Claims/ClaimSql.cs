namespace DxAssistant.Cases.Claims;

/// <summary>The words of the claims' database; parameters in the order they are filled.</summary>
internal static class ClaimSql
{
    public const string Tables = """
        CREATE TABLE IF NOT EXISTS claim_entry (
            claim TEXT NOT NULL, sequence BIGINT NOT NULL, at BIGINT NOT NULL, by_whom TEXT NOT NULL, body TEXT NOT NULL,
            hash TEXT NOT NULL, PRIMARY KEY (claim, sequence));
        CREATE TABLE IF NOT EXISTS claim_head (
            claim TEXT PRIMARY KEY, case_id TEXT NOT NULL, state TEXT NOT NULL, at BIGINT NOT NULL);
        CREATE INDEX IF NOT EXISTS claim_head_by_case ON claim_head (case_id);
        CREATE TABLE IF NOT EXISTS claim_notice (
            claim TEXT NOT NULL, sequence BIGINT NOT NULL, body TEXT NOT NULL, tries BIGINT NOT NULL, due BIGINT NOT NULL,
            PRIMARY KEY (claim, sequence));
        """;

    public const string AddEntry =
        "INSERT INTO claim_entry VALUES (@p0, @p1, @p2, @p3, @p4, @p5) ON CONFLICT DO NOTHING";

    public const string SetHead = """
        INSERT INTO claim_head VALUES (@p0, @p1, @p2, @p3)
        ON CONFLICT (claim) DO UPDATE SET state = excluded.state, at = excluded.at
        """;

    public const string AddNotice = "INSERT INTO claim_notice VALUES (@p0, @p1, @p2, 0, @p3)";

    public const string ReadEntries =
        "SELECT sequence, at, by_whom, body, hash FROM claim_entry WHERE claim = @p0 ORDER BY sequence";

    public const string List = """
        SELECT claim, case_id, state, at FROM claim_head
        WHERE (@p0 = '' OR state = @p0) AND (@p1 = '' OR case_id = @p1) AND (at < @p3 OR (at = @p3 AND claim > @p4)) ORDER BY at DESC, claim LIMIT @p2
        """;

    public const string Due =
        "SELECT claim, sequence, body, tries FROM claim_notice WHERE due <= @p0 ORDER BY due, claim, sequence LIMIT @p1";

    public const string Told = "DELETE FROM claim_notice WHERE claim = @p0 AND sequence = @p1";

    public const string PutOff =
        "UPDATE claim_notice SET tries = tries + 1, due = @p2 WHERE claim = @p0 AND sequence = @p1";
}
