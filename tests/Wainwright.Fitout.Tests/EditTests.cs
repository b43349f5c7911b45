namespace Wainwright.Fitout.Tests;

public class EditTests
{
    static readonly Job Van = Samples.Small();

    static Change One(Edit edit) => new("test", [edit]);

    [Fact]
    public void An_edit_changes_one_entry_and_its_inverse_brings_the_same_document_back()
    {
        var heavier = One(Edit.Put(Van, "parts", "P1", Van.Parts[0] with { MassKg = 14 }));
        var after = heavier.On(Van).Job!;
        Assert.Equal(14, after.Parts[0].MassKg!.Value.Value);
        Assert.Equal(Samples.Text(Van), Samples.Text(heavier.Inverse().On(after, undoing: true).Job!));
    }

    [Fact]
    public void An_edit_of_something_that_changed_meanwhile_is_refused()
    {
        var mine = One(Edit.Put(Van, "parts", "P1", Van.Parts[0] with { Name = "mine" }));
        var theirs = One(Edit.Put(Van, "parts", "P1", Van.Parts[0] with { Name = "theirs" })).On(Van).Job!;
        var refused = mine.On(theirs);
        Assert.Null(refused.Job);
        Assert.Contains("changed since", Assert.Single(refused.Issues).Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_once_taken_cannot_be_changed_only_corrected_by_another()
    {
        var rewrite = One(Edit.Put(Van, "readings", "R1", Van.Readings[0] with { Value = 9 }));
        Assert.Null(rewrite.On(Van).Job);
        Assert.Null(One(Edit.TakeOut(Van, "readings", "R1")).On(Van).Job);

        var correction = One(Edit.Put(Van, "readings", "R2", Van.Readings[0] with { Id = new("R2"), Value = 9, Corrects = new("R1") }));
        var after = correction.On(Van).Job!;
        Assert.Equal(18.5, after.Readings[0].Value.Value);
        Assert.Equal(Samples.Text(Van), Samples.Text(correction.Inverse().On(after, undoing: true).Job!));
    }

    [Fact]
    public void Edits_that_belong_together_are_made_together_or_not_at_all()
    {
        var alone = One(Edit.TakeOut(Van, "parts", "P1")).On(Van);
        Assert.Null(alone.Job);
        Assert.Contains(alone.Issues, i => i.Rule.Contains("P1", StringComparison.Ordinal));

        var together = new Change("take out P1 and what hangs on it",
        [
            Edit.Put(Van, "parts", "P2", Van.Parts[1] with { StandsOn = [] }),
            Edit.TakeOut(Van, "joints", "J1"),
            Edit.Put(Van, "points", "Q1", Van.Points[0] with { Part = null }),
            Edit.Put(Van, "findings", "F1", Van.Findings[0] with { Parts = [] }),
            Edit.TakeOut(Van, "parts", "P1"),
        ]);
        Assert.Single(together.On(Van).Job!.Parts);
    }

    [Fact]
    public void What_was_wrong_before_does_not_stop_an_edit()
    {
        var wrong = Van with { Joints = [Van.Joints[0] with { StateCount = 9 }] };
        Assert.NotEmpty(JobRules.Of(wrong));
        Assert.NotNull(One(Edit.Field(wrong, "title", "new")).On(wrong).Job);
    }

    [Fact]
    public void A_field_of_the_wrong_shape_is_refused_with_its_place()
    {
        var nonsense = System.Text.Json.JsonSerializer.SerializeToElement(new { id = "P1", name = 3 });
        var refused = One(new Edit("parts/P1", Edit.Current(Van, "parts/P1"), nonsense)).On(Van);
        Assert.Null(refused.Job);
        Assert.Contains(refused.Issues, i => i.Where == "parts/P1.name");
    }

    [Fact]
    public void A_place_that_does_not_exist_is_refused() =>
        Assert.Null(One(new Edit("secrets/1", null, null)).On(Van).Job);

    [Fact]
    public void An_entry_put_at_another_id_is_refused()
    {
        var refused = One(Edit.Put(Van, "parts", "P9", Van.Parts[0])).On(Van);
        Assert.Null(refused.Job);
        Assert.Contains("another id", Assert.Single(refused.Issues).Rule, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("title")]
    [InlineData("vehicle")]
    public void What_every_job_has_cannot_be_taken_out(string field) =>
        Assert.Null(One(new Edit(field, Edit.Current(Van, field), null)).On(Van).Job);

    [Fact]
    public void A_note_is_taken_out_by_putting_nothing()
    {
        var noted = One(Edit.Field(Van, "note", "keys in the office")).On(Van).Job!;
        Assert.Null(One(Edit.Field<string?>(noted, "note", null)).On(noted).Job!.Note);
    }

    [Fact]
    public void An_old_doubt_does_not_come_back_as_new_when_places_shift()
    {
        var doubtful = Van with { Findings = [Van.Findings[0], Van.Findings[0] with { Id = new("F2"), Known = Known.NotInspected }] };
        var changed = One(Edit.TakeOut(doubtful, "findings", "F1")).On(doubtful);
        Assert.NotNull(changed.Job);
        Assert.Empty(changed.Issues);
    }
}
