using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace DxAssistant.Cases.Log;

/// <summary>The chain of hashes over the log of a case: whoever changes, takes out or puts in an entry changes every
/// hash after it.</summary>
/// <remarks>
/// SHA-256 (FIPS 180-4) over UTF-8 text: the hash before in lower-case hexadecimal (64 zeros before the first),
/// the case's name, the sequence number, the time in milliseconds since 1970-01-01 UTC and the length of the turn id in
/// bytes, each with a line feed behind it, then the turn id and the body.
/// </remarks>
internal static class Chain
{
    /// <summary>What stands before the first entry.</summary>
    public const string Beginning = "0000000000000000000000000000000000000000000000000000000000000000";

    /// <summary>The rows of a turn that follows an entry.</summary>
    /// <param name="last">The sequence number of that entry; 0 for a new case.</param>
    /// <param name="lastHash">Its hash; <see cref="Beginning"/> for a new case.</param>
    public static ImmutableArray<LogRow> Seal(
        string caseId, long last, string lastHash, string turnId, DateTimeOffset at, ImmutableArray<EntryText> entries)
    {
        var rows = ImmutableArray.CreateBuilder<LogRow>(entries.Length);
        foreach (var entry in entries)
        {
            lastHash = Next(lastHash, caseId, ++last, turnId, at, entry.Body);
            rows.Add(new LogRow(last, turnId, at, entry.Body, entry.Aside, lastHash));
        }

        return rows.MoveToImmutable();
    }

    /// <summary>The events in rows that follow each other.</summary>
    /// <param name="after">The hash before the first of them.</param>
    /// <exception cref="CaseFileException">A row was altered, is missing, or is not an event this program
    /// knows.</exception>
    public static ImmutableArray<StoredEvent> Open(
        string caseId, IReadOnlyList<LogRow> rows, string after = Beginning, long last = 0)
    {
        var events = ImmutableArray.CreateBuilder<StoredEvent>(rows.Count);
        foreach (var row in rows)
        {
            Check(caseId, row, ++last, after);
            events.Add(Read(caseId, row));
            after = row.Hash;
        }

        return events.MoveToImmutable();
    }

    private static void Check(string caseId, LogRow row, long sequence, string after)
    {
        if (row.Sequence != sequence)
            throw Altered(caseId, sequence, "it is missing");
        if (row.Hash != Next(after, caseId, row.Sequence, row.TurnId, row.At, row.Body))
            throw Altered(caseId, sequence, "its hash does not fit");
    }

    private static StoredEvent Read(string caseId, LogRow row)
    {
        try
        {
            return new StoredEvent(row.Sequence, row.TurnId, row.At, Veil.Lift(new EntryText(row.Body, row.Aside)))
            {
                Hash = row.Hash,
            };
        }
        catch (AlteredException error)
        {
            throw Altered(caseId, row.Sequence, error.Message);
        }
        catch (Exception error) when (error is JsonException or NotSupportedException or InvalidOperationException
            or FormatException)
        {
            throw new CaseFileException(
                $"entry {row.Sequence} of case {caseId} cannot be read: use the program that wrote it", error);
        }
    }

    /// <summary>What is said of an entry that is not as it was written.</summary>
    public static CaseFileException Altered(string caseId, long sequence, string how) => new(string.Create(
        CultureInfo.InvariantCulture,
        $"entry {sequence} of case {caseId} was altered ({how}): restore the cases from a backup"));

    private static string Next(
        string previous, string caseId, long sequence, string turnId, DateTimeOffset at, string body)
    {
        string text = string.Create(
            CultureInfo.InvariantCulture,
            $"{previous}\n{caseId}\n{sequence}\n{at.ToUnixTimeMilliseconds()}\n{Encoding.UTF8.GetByteCount(turnId)}\n{turnId}{body}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
    }
}
