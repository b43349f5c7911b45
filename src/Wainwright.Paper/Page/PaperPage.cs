using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;

namespace Wainwright.Paper;

/// <summary>A component rendered as a whole page, without a server.</summary>
internal static class PaperPage
{
    public static async Task<string> Html<T>(string title, IReadOnlyDictionary<string, object?> parameters) where T : IComponent
    {
        await using var services = new ServiceCollection().AddSingleton<ILoggerFactory>(NullLoggerFactory.Instance).BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            RenderFragment body = builder =>
            {
                builder.OpenComponent<T>(0);
                foreach (var (name, value) in parameters) builder.AddComponentParameter(1, name, value);
                builder.CloseComponent();
            };
            var root = await renderer.RenderComponentAsync<PageFrame>(ParameterView.FromDictionary(new Dictionary<string, object?>
            {
                [nameof(PageFrame.Title)] = title,
                [nameof(PageFrame.ChildContent)] = body,
            }));
            return "<!doctype html>\n" + root.ToHtmlString() + "\n";
        });
    }

    /// <summary>The style sheet that every page carries within itself; a screen may serve it too.</summary>
    public static string Css()
    {
        using var stream = typeof(PaperPage).Assembly.GetManifestResourceStream("Wainwright.Paper.paper.css")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
