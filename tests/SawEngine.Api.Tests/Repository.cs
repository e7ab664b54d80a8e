namespace SawEngine.Api.Tests;

/// <summary>Files of the repository that tests compare with.</summary>
internal static class Repository
{
    public static string Read(params string[] path) => File.ReadAllText(Find(path));

    public static string Find(params string[] path) => Path.Combine([Root(), .. path]);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "SawEngine.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests run outside the repository.");
    }
}
