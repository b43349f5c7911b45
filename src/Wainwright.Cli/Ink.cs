namespace Wainwright.Cli;

/// <summary>Colour for a terminal: always beside the word, never instead of it.</summary>
/// <param name="on">Whether colour is shown at all.</param>
internal sealed class Ink(bool on)
{
    public string Bad(string text) => Wrap("31;1", text);

    public string Doubt(string text) => Wrap("33", text);

    public string Good(string text) => Wrap("32", text);

    public string Strong(string text) => Wrap("1", text);

    public string Faint(string text) => Wrap("2", text);

    private string Wrap(string code, string text) => on ? $"\e[{code}m{text}\e[0m" : text;
}
