using Wainwright.Fitout;

namespace Wainwright.Web;

/// <summary>Addresses of the screens.</summary>
internal static class Go
{
    public static string Job(string job, string screen = "", string item = "") =>
        $"job/{Uri.EscapeDataString(job)}{(screen.Length > 0 ? "/" + screen : "")}{(item.Length > 0 ? "/" + Uri.EscapeDataString(item) : "")}";

    public static string Part(string job, PartId part) => Job(job, "part", part.Text);

    public static string Photo(PhotoHash photo) => $"photo/{photo}";
}
