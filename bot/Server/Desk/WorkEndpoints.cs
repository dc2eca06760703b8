using System.Collections.Immutable;
using System.ComponentModel;
using DxAssistant.Cases;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;
using DxAssistant.Server.HandOver;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Desk;

/// <summary>The work list over HTTP, and word of its changes as they happen.</summary>
internal sealed class WorkEndpoints(ICaseStore store, CaseBell bell, Func<InUse> inUse,
    IHostApplicationLifetime program)
{
    private const string Part = "Work list";
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(1);

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/work", ListAsync).Says<Row[]>(Part, "Finds cases by words of their logs.").Refuses(400);
        routes.MapGet("/api/work/filters", () => Results.Json(Filters(inUse().Titles), ChatJson.Options))
            .Says<FilterWords>(Part, "Lists the units and faults by which the work list can be narrowed.");
        routes.MapGet("/api/work/changes", ChangesAsync)
            .Says<string>(Part, "Tells of each change as server-sent events.", type: "text/event-stream");
    }

    private async Task<IResult> ListAsync(
        [Description("Words or their beginnings, all of which stand somewhere in the log.")] string? text,
        [Description("The id of a series.")] string? series,
        [Description("The id of the likeliest or proven fault.")] string? fault,
        [Description("open or ended; both if left out.")] string? stands,
        [Description("newest, oldest, series or fault.")] string? order,
        [Description("How many a page holds at most, 1 to 1000; 100 if left out.")] int? limit,
        [Description("Where the page begins, as the header Link of the page before names it.")] string? after,
        HttpContext http, CancellationToken cancel)
    {
        if (Paging.Read(limit) is not { } most) return Paging.BadLimit();
        if (!WorkPlace.TryRead(after, out var place)) return Paging.BadPlace();
        var titles = inUse().Titles;
        if ((OneOf.Refuse<WorkOrder>("order", order) ?? OneOf.Refuse("stands", stands, ["open", "ended"])
            ?? OneOf.Refuse("series", series, titles.Series.Keys.Order(StringComparer.Ordinal))) is { } wrong)
            return wrong;
        var query = new WorkQuery(
            text ?? "", Said(series), Said(fault), stands switch { "open" => true, "ended" => false, _ => null },
            Enum.TryParse<WorkOrder>(order, ignoreCase: true, out var chosen) && Enum.IsDefined(chosen)
                ? chosen
                : WorkOrder.Newest, most, place);
        var page = await store.SearchAsync(query, cancel);
        Paging.Next(http, "after", page.Next?.ToString());
        return Results.Json(page.Lines.Select(line => new Row(
            line, Title(titles.Series, line.Series), Title(titles.Faults, line.Fault))), ChatJson.Options);
    }

    // Server-sent events (WHATWG HTML, 9.2): what was appended last, whenever that changes, once a second at most.
    // Where other programs do not tell of what they append, the store is asked each second.
    private async Task ChangesAsync(HttpContext http, CancellationToken left)
    {
        // The program does not wait for listeners when it ends.
        using var until = CancellationTokenSource.CreateLinkedTokenSource(left, program.ApplicationStopping);
        var cancel = until.Token;
        http.Response.ContentType = "text/event-stream";
        string? known = null;
        try
        {
            while (true)
            {
                var next = bell.NextOfAny(); // before the store is asked, so that nothing falls in between
                var last = (await store.ListAsync(1, cancel)).FirstOrDefault();
                string now = last is null
                    ? "none"
                    : FormattableString.Invariant($"{last.Id} {last.LastAt.ToUnixTimeMilliseconds()}");
                await http.Response.WriteAsync(now == known ? ":\n\n" : $"data: {now}\n\n", cancel);
                await http.Response.Body.FlushAsync(cancel);
                known = now;
                await Task.Delay(Between, cancel);
                await bell.UntilAsync(next, TimeSpan.Zero, cancel);
                cancel.ThrowIfCancellationRequested();
            }
        }
        catch (OperationCanceledException)
        {
            // The page was left.
        }
    }

    private static FilterWords Filters(TitleBook titles) => new(Choices(titles.Series), Choices(titles.Faults));

    private static ImmutableArray<Choice> Choices(ImmutableDictionary<string, string> titles) =>
        [.. titles.Select(page => new Choice(page.Key, page.Value))
            .OrderBy(choice => choice.Title, StringComparer.Ordinal)];

    private static string? Title(ImmutableDictionary<string, string> titles, string? id) =>
        id is null ? null : TitleBook.Find(titles, id);

    private static string? Said(string? id) => string.IsNullOrEmpty(id) ? null : id;

    internal sealed record Row(WorkLine Case, string? Series, string? Fault);

    internal sealed record Choice(string Id, string Title);

    internal sealed record FilterWords(ImmutableArray<Choice> Series, ImmutableArray<Choice> Faults);
}
