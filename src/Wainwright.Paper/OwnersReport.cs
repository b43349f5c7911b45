using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>The honest page for the owners: plain language first, figures second, source last.</summary>
public static class OwnersReport
{
    /// <summary>The report as one HTML page that needs nothing from outside and holds no script.</summary>
    /// <param name="job">The job.</param>
    /// <param name="answers">What Survey says of it; see <see cref="Answers.Of"/>.</param>
    /// <param name="photos">Fetches a photo's bytes.</param>
    /// <param name="seal">Hash of the record it is made from, printed at its end; absent when there is none.</param>
    public static Task<string> Html(Job job, Answers answers, PhotoBytes photos, string? seal = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        return PaperPage.Html<ReportBody>($"What we found in your van: {job.Title}", new Dictionary<string, object?>
        {
            [nameof(ReportBody.Job)] = job,
            [nameof(ReportBody.Answers)] = answers,
            [nameof(ReportBody.Photos)] = photos,
            [nameof(ReportBody.Seal)] = seal,
        });
    }
}
