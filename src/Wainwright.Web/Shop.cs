using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Wainwright.Records;
using Wainwright.Web.Components;
using Wainwright.Web.Protect;

namespace Wainwright.Web;

/// <summary>The workshop's screens, served to this machine alone.</summary>
public static class Shop
{
    /// <summary>Address when nobody names another.</summary>
    public const string UsualUrl = "http://127.0.0.1:5080";

    /// <summary>
    /// Serves the screens until the program is stopped. Settings: <c>Wain:Store</c> folder of the store, <c>Wain:Demo</c> job files
    /// or containers to begin an empty store with (semicolons between), <c>urls</c> another address on this machine.
    /// </summary>
    /// <returns>0 when stopped, 2 when a setting is wrong or the store cannot be opened.</returns>
    public static async Task<int> Run(string[] args, CancellationToken stop = default)
    {
        try
        {
            await using var app = Build(args);
            await app.RunAsync(stop);
            return 0;
        }
        catch (StoreException fault)
        {
            await Console.Error.WriteLineAsync($"{fault.Message}: {fault.Mend}");
            return 2;
        }
        catch (SettingException fault)
        {
            await Console.Error.WriteLineAsync(fault.Message);
            return 2;
        }
    }

    /// <summary>The same for a program that has its settings at hand already.</summary>
    public static Task<int> Run(string storeFolder, string url, IEnumerable<string> demoFiles, CancellationToken stop = default) =>
        Run(["--Wain:Store", storeFolder, "--urls", url, "--Wain:Demo", string.Join(';', demoFiles)], stop);

    private static WebApplication Build(string[] args)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            Args = args,
            ApplicationName = typeof(Shop).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
        });
        // static files of a build lie in the sources and packages; its manifest says where
        builder.WebHost.UseStaticWebAssets();
        if (string.IsNullOrEmpty(builder.Configuration["urls"])) builder.WebHost.UseUrls(UsualUrl);
        Loopback.Only(builder.Configuration["urls"] ?? UsualUrl);

        builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
        builder.Services.Configure<KestrelServerOptions>(k => k.AddServerHeader = false);
        builder.Services.Configure<HostFilteringOptions>(h => h.AllowedHosts = [.. Loopback.Names]);
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        // nothing that outlives the program is protected with these keys
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton(services => Store.Open(builder.Configuration["Wain:Store"] is { Length: > 0 } named ? named : Store.DefaultFolder(), services.GetRequiredService<TimeProvider>()));
        builder.Services.AddSingleton<Rounds>();
        builder.Services.AddSingleton<Holds>();
        builder.Services.AddSingleton<Damps>();
        builder.Services.AddScoped<Bench>();

        var app = builder.Build();
        var store = app.Services.GetRequiredService<Store>();
        if (builder.Configuration["Wain:Demo"] is { Length: > 0 } demo) FirstJobs.Into(store, demo.Split(';', StringSplitOptions.RemoveEmptyEntries), app.Logger);

        app.UseExceptionHandler("/trouble", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/nowhere", createScopeForStatusCodePages: true);
        app.UseMiddleware<Doors>();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapFiles();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(live => live.ContentSecurityFrameAncestorsPolicy = null); // Doors says it for every page
        return app;
    }
}
