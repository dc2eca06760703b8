using DxAssistant.Server.Channels;

namespace DxAssistant.Bot.Tests.Server;

public sealed class ServiceUrlListTests
{
    private readonly ServiceUrlList list = new([new Uri("https://channel.example/")]);

    [Theory]
    [InlineData("http://localhost:50000", true)]
    [InlineData("http://127.0.0.1/", true)]
    [InlineData("https://channel.example/emea/", true)]
    [InlineData("https://channel.example:444/", false)]
    [InlineData("http://channel.example/", false)]
    [InlineData("https://channel.example.evil.example/", false)]
    [InlineData("https://other.example/", false)]
    [InlineData("ftp://localhost/", false)]
    [InlineData("localhost", false)]
    [InlineData(null, false)]
    public void Allows_Address_OnlyThisMachineAndThoseNamed(string? url, bool allowed) =>
        Assert.Equal(allowed, list.Allows(url));
}
