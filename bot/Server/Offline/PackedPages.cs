using System.IO.Compression;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Offline;

/// <summary>The pages of one version of the content, packed for the browser when first asked for.</summary>
internal sealed class PackedPages(ContentFolder folder)
{
    private const int Quality = 9;
    private const int Window = 22;

    private readonly Lazy<byte[]> brotli = new(() => Compress(ContentPack.Write(folder)));

    public ContentFolder Folder => folder;

    /// <summary>The pack, compressed with Brotli.</summary>
    public byte[] Brotli => brotli.Value;

    private static byte[] Compress(byte[] pack)
    {
        byte[] packed = new byte[BrotliEncoder.GetMaxCompressedLength(pack.Length)];
        return BrotliEncoder.TryCompress(pack, packed, out int written, Quality, Window)
            ? packed[..written]
            : throw new InvalidOperationException("the pages do not fit the room that Brotli says they need");
    }
}
