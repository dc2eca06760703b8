using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Claims;
using DxAssistant.Cases.Export;
using DxAssistant.Cases.WorkList;

namespace DxAssistant.Cases.Personal;

/// <summary>Finds, gives out and removes what is kept about a person, wherever it lies.</summary>
/// <remarks>
/// Not removed: readings, results and serial numbers, which say nothing about anybody; what a claim says, whose sheet
/// has left the house; and the names of accounts, with what they saw and changed.
/// </remarks>
public sealed class PersonalDesk(ICaseStore cases, DeskBooks books, AccountBook accounts, TimeProvider clock)
{
    private const int MostCases = 1000;
    private const string Format = "dxassistant-person";
    private const int Version = 1;

    /// <summary>
    /// The cases that speak of somebody, in their logs, their calls or the serial number of their unit.
    /// </summary>
    /// <param name="about">A name, a telephone number or a serial number; at least three characters.</param>
    /// <exception cref="ArgumentException">It is shorter.</exception>
    public async Task<ImmutableArray<string>> FindAsync(string about, CancellationToken cancel = default)
    {
        if (about.Trim().Length < 3)
            throw new ArgumentException("say at least three characters of the name or number", nameof(about));
        var said = await cases.SearchAsync(new WorkQuery(about, Limit: MostCases), cancel);
        var units = await cases.WithSerialAsync(about, cancel);
        var called = await books.Calls.FindAsync(about, cancel);
        return [.. said.Lines.Select(line => line.Id).Concat(units).Concat(called).Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)];
    }

    /// <summary>Everything that is kept about somebody, as one JSON document.</summary>
    /// <exception cref="ArgumentException">There are fewer than three characters.</exception>
    public async Task<JsonObject> GiveOutAsync(string about, CancellationToken cancel = default)
    {
        var names = await FindAsync(about, cancel);
        var (logs, calls, claims) = (new JsonArray(), new JsonArray(), new JsonArray());
        foreach (string name in names)
        {
            if (await CaseExchange.TakeOutAsync(cases, name, cancel) is { } whole)
                logs.Add(JsonNode.Parse(whole.Write()));
            if (await CallAsync(name, cancel) is { } call) calls.Add(call);
            foreach (var head in await books.Claims.ListAsync(ofCase: name, cancel: cancel))
                claims.Add(await ClaimAsync(head, cancel));
        }

        return new JsonObject
        {
            ["format"] = Format, ["version"] = Version, ["about"] = about, ["at"] = Node(clock.GetUtcNow()),
            ["cases"] = logs, ["calls"] = calls, ["claims"] = claims, ["account"] = Account(about),
        };
    }

    /// <summary>Removes people's own words from a case and from its call.</summary>
    /// <returns>How many entries of the log lost words; null when there is no such case.</returns>
    public async Task<int?> BlankAsync(string caseId, CancellationToken cancel = default)
    {
        if (await cases.LastAsync(caseId, cancel) == 0) return null;
        await books.Calls.BlankAsync(caseId, cancel);
        return await cases.BlankAsync(caseId, cancel);
    }

    private async Task<JsonObject?> CallAsync(string caseId, CancellationToken cancel)
    {
        var slip = (await books.Calls.WaitingAsync(cancel)).FirstOrDefault(waiting => waiting.Case == caseId);
        var notes = await books.Calls.NotesAsync(caseId, cancel);
        return slip is null && notes.IsEmpty
            ? null
            : new JsonObject { ["case"] = caseId, ["aside"] = Node(slip), ["notes"] = Node(notes) };
    }

    private async Task<JsonObject> ClaimAsync(ClaimHead head, CancellationToken cancel) => new JsonObject
    {
        ["claim"] = head.Id, ["case"] = head.Case, ["state"] = head.State.ToString(),
        ["entries"] =
            new JsonArray([.. (await books.Claims.ReadAsync(head.Id, cancel)).Select(entry => (JsonNode)new JsonObject
            {
                ["sequence"] = entry.Sequence, ["at"] = Node(entry.At), ["by"] = entry.By,
                ["event"] = JsonNode.Parse(ClaimJson.Write(entry.Event)), ["hash"] = entry.Hash,
            })]),
    };

    private JsonObject? Account(string about) =>
        AccountName.Read(about) is { } name && accounts.Find(name) is { } account
        ? new JsonObject
        {
            ["name"] = account.Name, ["roles"] = account.Roles.ToString(), ["open"] = account.IsOpen,
            ["letInto"] = Node(accounts.CasesOf(name).Order(StringComparer.Ordinal)),
            ["audit"] = Node(accounts.AuditOf(name)),
        }
        : null;

    private static JsonNode? Node<T>(T value) => JsonSerializer.SerializeToNode(value, JsonSerializerOptions.Web);
}
