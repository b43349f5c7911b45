using System.Security.Cryptography;
using System.Text;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

public class PhotoTests
{
    public static TheoryData<string, string?> Heads => new()
    {
        { "FFD8FFE1", "image/jpeg" },
        { "89504E470D0A1A0A", "image/png" },
        { "5249464600000000574542505650382000", "image/webp" },
        { "0000001866747970686569630000000068656963", "image/heic" },
        { "000000186674797068657678000000006D696631", "image/heic" },
        { "0000001C667479706D696631000000006D69663168656963", "image/heic" },
        { "0000001C667479706D6966310000000061766966", null }, // AVIF
        { "0000001866747970697336F6D00000000", null }, // film
        { "FFD8", null },
        { "474946383961", null }, // GIF
        { "25504446", null }, // PDF
        { "3C737667", null }, // SVG: may hold script
        { "52494646000000005741564566", null }, // sound
        { "", null },
        { "000000006674797068656963", null },
    };

    [Theory]
    [MemberData(nameof(Heads))]
    public void The_kind_is_told_from_the_bytes(string hex, string? type)
    {
        using var shop = new Workshop(withJob: false);
        var bytes = Convert.FromHexString(hex.Length % 2 == 0 ? hex : hex + "0");
        var taken = shop.Store.AddPhoto(new MemoryStream(bytes));
        Assert.Equal(type, taken.MediaType);
        Assert.Equal(type is null ? 0 : 1, shop.FilesIn("photos").Length);
        if (type is null) Assert.Contains("JPEG, PNG, WebP or HEIC", Assert.Single(taken.Issues).Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void A_photo_comes_back_byte_for_byte_under_the_hash_of_its_bytes()
    {
        using var shop = new Workshop(withJob: false);
        var bytes = Samples.Jpeg(1, 700_001);
        var taken = shop.Store.AddPhoto(new Dripping(new MemoryStream(bytes)));
        Assert.Equal((Convert.ToHexStringLower(SHA256.HashData(bytes)), "image/jpeg", 700_001L), (taken.Hash!.Value.Text, taken.MediaType, taken.Bytes));
        using var back = new MemoryStream();
        using (var stored = shop.Store.OpenPhoto(taken.Hash.Value)!) stored.CopyTo(back);
        Assert.Equal(bytes, back.ToArray());
        Assert.Equal("image/jpeg", shop.Store.MediaTypeOf(taken.Hash.Value));
    }

    [Fact]
    public async Task A_source_that_can_only_be_waited_for_is_taken_too()
    {
        using var shop = new Workshop(withJob: false);
        var bytes = Samples.Jpeg(2, 300_000);
        var taken = await shop.Store.AddPhotoAsync(new Waiting(bytes), stop: TestContext.Current.CancellationToken);
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), taken.Hash!.Value.Text);
        var large = await shop.Store.AddPhotoAsync(new Waiting(bytes), 299_999, TestContext.Current.CancellationToken);
        Assert.Null(large.Hash);
        Assert.Single(shop.FilesIn("photos"));
    }

    [Fact]
    public void The_same_photo_is_stored_once()
    {
        using var shop = new Workshop(withJob: false);
        var first = shop.Store.AddPhoto(new MemoryStream(Samples.Jpeg(1)));
        Assert.Equal(first.Hash, shop.Store.AddPhoto(new MemoryStream(Samples.Jpeg(1))).Hash);
        Assert.Equal(first.Hash + ".jpg", Path.GetFileName(Assert.Single(shop.FilesIn("photos"))));
    }

    [Fact]
    public void Two_gigabytes_are_refused_after_fifty_megabytes_without_a_file_left_behind()
    {
        using var shop = new Workshop(withJob: false);
        using var endless = new Endless(2L << 30);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var taken = shop.Store.AddPhoto(endless);
        Assert.Null(taken.Hash);
        Assert.Contains("at most 52.4 MB", Assert.Single(taken.Issues).Rule, StringComparison.Ordinal);
        Assert.InRange(endless.Given, Store.LargestPhoto, Store.LargestPhoto + (1 << 20));
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 4 << 20);
        Assert.Empty(shop.FilesIn("photos"));
    }

    [Fact]
    public void A_file_that_says_it_is_too_large_is_not_even_begun()
    {
        using var shop = new Workshop(withJob: false);
        var bytes = new MemoryStream(Samples.Jpeg(1, 5000));
        Assert.Null(shop.Store.AddPhoto(bytes, largest: 4999).Hash);
        Assert.Equal(0, bytes.Position);
        bytes.Position = 0;
        Assert.NotNull(shop.Store.AddPhoto(bytes, largest: 5000).Hash);
    }

    [Fact]
    public void A_source_that_breaks_off_leaves_no_file()
    {
        using var shop = new Workshop(withJob: false);
        Assert.Throws<StoreDamagedException>(() => shop.Store.AddPhoto(new Breaking(new IOException("line broke"))));
        Assert.Throws<StoreFullException>(() => shop.Store.AddPhoto(new Breaking(new IOException("full", 28))));
        Assert.Empty(shop.FilesIn("photos"));
    }

    [Fact]
    public void What_an_interrupted_intake_left_is_swept_away_after_a_day_and_not_before()
    {
        using var shop = new Workshop(withJob: false);
        var left = Path.Combine(shop.Folder, "photos", "incoming", "x.part");
        Directory.CreateDirectory(Path.GetDirectoryName(left)!);
        File.WriteAllText(left, "half");
        File.SetLastWriteTimeUtc(left, shop.Clock.Now.UtcDateTime.AddHours(-23));
        shop.Reopen();
        Assert.True(File.Exists(left));
        shop.Clock.Now = shop.Clock.Now.AddHours(2);
        shop.Reopen();
        Assert.False(File.Exists(left));
    }

    [Theory]
    [InlineData("../../records")]
    [InlineData("")]
    [InlineData("ABCDEF")]
    public void A_name_that_is_no_hash_is_no_photo(string name)
    {
        using var shop = new Workshop(withJob: false);
        Assert.Null(shop.Store.OpenPhoto(new(name)));
        Assert.Null(shop.Store.MediaTypeOf(new(name)));
    }

    /// <summary>Hands over seven bytes at a time.</summary>
    private sealed class Dripping(Stream from) : OneWay
    {
        public override int Read(byte[] buffer, int offset, int count) => from.Read(buffer, offset, Math.Min(count, 7));
    }

    private sealed class Endless(long length) : OneWay
    {
        public long Given { get; private set; }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var give = (int)Math.Min(count, length - Given);
            if (Given == 0) Samples.Jpeg(1, 200).CopyTo(buffer, offset);
            Given += give;
            return give;
        }

        public override int Read(Span<byte> buffer)
        {
            var give = (int)Math.Min(buffer.Length, length - Given);
            if (Given == 0) Samples.Jpeg(1, 200).CopyTo(buffer);
            Given += give;
            return give;
        }
    }

    private sealed class Breaking(IOException error) : OneWay
    {
        private int pieces;

        public override int Read(byte[] buffer, int offset, int count)
        {
            if (pieces++ > 0) throw error;
            Samples.Jpeg(1, 200).CopyTo(buffer, offset);
            return 200;
        }
    }

    /// <summary>As a browser's file: reading at once is not offered.</summary>
    private sealed class Waiting(byte[] bytes) : OneWay
    {
        private int at;

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException("only to be waited for");

        public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            await Task.Yield();
            var give = Math.Min(Math.Min(buffer.Length, bytes.Length - at), 1000);
            bytes.AsMemory(at, give).CopyTo(buffer);
            at += give;
            return give;
        }
    }
}

/// <summary>A stream that is only read, from its beginning.</summary>
internal abstract class OneWay : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    public override void Flush() => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
