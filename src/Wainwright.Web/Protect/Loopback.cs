namespace Wainwright.Web.Protect;

/// <summary>This machine's own names. The screens have no log-in, so nobody else may reach them.</summary>
internal static class Loopback
{
    public static readonly IReadOnlyList<string> Names = ["localhost", "127.0.0.1", "[::1]"];

    /// <exception cref="SettingException">An address would be open to others.</exception>
    public static void Only(string urls)
    {
        foreach (var url in urls.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            if (!Uri.TryCreate(url, UriKind.Absolute, out var address) || !address.IsLoopback)
                throw new SettingException($"“{url}” is not an address of this machine alone; write it as {Shop.UsualUrl} with another port");
    }
}

/// <summary>A setting that cannot be used; the message says how to mend it.</summary>
public sealed class SettingException(string message) : Exception(message);
