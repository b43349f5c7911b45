using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;

namespace Wainwright.Journeys;

/// <summary>The whole program on a free port over a store of its own.</summary>
public sealed class Shop : WebApplicationFactory<Program>
{
    private readonly string store;
    private readonly string demo;

    public Shop(string store, params string[] demo)
    {
        (this.store, this.demo) = (store, string.Join(';', demo));
        UseKestrel(0);
        StartServer();
    }

    public string Address => ClientOptions.BaseAddress.ToString();

    public static string Demo(string file) => Path.Combine(AppContext.BaseDirectory, "demo", file);

    protected override void ConfigureWebHost(IWebHostBuilder builder) =>
        builder.UseEnvironment("Development").UseSetting("Wain:Store", store).UseSetting("Wain:Demo", demo);
}
