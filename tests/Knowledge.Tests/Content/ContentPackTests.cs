using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Tests.Content;

public sealed class ContentPackTests
{
    [Fact]
    public void Read_WrittenPack_IsTheSameFolder()
    {
        ContentFolder read = ContentPack.Read(ContentPack.Write(TinyContent.Folder));

        Assert.Equal(TinyContent.Folder.Files.Select(file => (file.Path, file.Text)),
            read.Files.Select(file => (file.Path, file.Text)));
        Assert.Equal(ContentCompiler.Compile(TinyContent.Folder).Library!.Version,
            ContentCompiler.Rebuild(read).Version);
    }

    [Fact]
    public void Read_CutAnywhere_IsRefused()
    {
        byte[] pack = ContentPack.Write(TinyContent.Folder);
        for (int length = 0; length < pack.Length; length += 97)
            Assert.Throws<InvalidDataException>(() => ContentPack.Read(pack[..length]));
    }

    [Fact]
    public void Rebuild_PagesThatWereNeverSound_IsRefused() => Assert.Throws<InvalidOperationException>(
        () =>
            ContentCompiler.Rebuild(
                TinyContent.With("series/alder-one.md", "---\nkind: series\nid: alder-one\n---\n# Alder\n")));
}
