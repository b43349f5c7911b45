using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace Wainwright.Architecture;

/// <summary>What a compiled assembly says of itself, read without loading it.</summary>
sealed class Compiled : IDisposable
{
    readonly PEReader file;
    readonly MetadataReader reader;

    public Compiled(string path)
    {
        file = new PEReader(File.OpenRead(path));
        reader = file.GetMetadataReader();
    }

    public IReadOnlyList<string> References => [.. reader.AssemblyReferences.Select(r => reader.GetString(reader.GetAssemblyReference(r).Name))];

    /// <summary>Members of other assemblies that the code touches, as <c>Type.member</c>.</summary>
    public IReadOnlySet<string> MembersTouched => reader.MemberReferences.Select(reader.GetMemberReference).Where(m => m.Parent.Kind == HandleKind.TypeReference)
        .Select(m => $"{reader.GetString(reader.GetTypeReference((TypeReferenceHandle)m.Parent).Name)}.{reader.GetString(m.Name)}").ToHashSet();

    /// <summary>Text constants in the code: a name looked up by reflection would stand here.</summary>
    public IEnumerable<string> Texts
    {
        get
        {
            if (reader.GetHeapSize(HeapIndex.UserString) == 0) yield break;
            for (var at = FirstText(); !at.IsNil; at = reader.GetNextHandle(at)) yield return reader.GetUserString(at);
        }
    }

    /// <summary>Types a person named, nested ones too.</summary>
    public IEnumerable<string> Types => reader.TypeDefinitions.Select(t => reader.GetString(reader.GetTypeDefinition(t).Name)).Where(n => !n.Contains('<', StringComparison.Ordinal)).Select(n => n.Split('`')[0]);

    public void Dispose() => file.Dispose();

    UserStringHandle FirstText() => reader.GetNextHandle(MetadataTokens.UserStringHandle(0));
}
