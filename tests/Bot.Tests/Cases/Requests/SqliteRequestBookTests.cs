using DxAssistant.Cases.Requests;

namespace DxAssistant.Bot.Tests.Cases.Requests;

public sealed class SqliteRequestBookTests : RequestBookTests
{
    protected override RequestBook Make() => RequestBook.InMemory();
}
