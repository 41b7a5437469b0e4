import AtTime from '../../components/AtTime.astro';
import Budget from '../../components/Budget.astro';
import Change from '../../components/Change.astro';
import Choice from '../../components/Choice.astro';
import Costs from '../../components/Costs.astro';
import Donor from '../../components/Donor.astro';
import EntryCell from '../../components/EntryCell.astro';
import EntryHead from '../../components/EntryHead.astro';
import EntryLink from '../../components/EntryLink.astro';
import EntryTable from '../../components/EntryTable.astro';
import Forecast from '../../components/Forecast.astro';
import Hazard from '../../components/Hazard.astro';
import Parts from '../../components/Parts.astro';
import Photo from '../../components/Photo.astro';
import PhotoPair from '../../components/PhotoPair.astro';
import Sources from '../../components/Sources.astro';
import Spec from '../../components/Spec.astro';
import Survey from '../../components/Survey.astro';
import Tally from '../../components/Tally.astro';
import TaskBox from '../../components/TaskBox.astro';
import Timeline from '../../components/Timeline.astro';
import Wanted from '../../components/Wanted.astro';
import Working from '../../components/Working.astro';

/** What an entry's text is rendered with: the components an author may use, and our own links, tables and task boxes. */
export const entryParts = {
  AtTime,
  Budget,
  Change,
  Choice,
  Costs,
  Donor,
  Forecast,
  Hazard,
  Parts,
  Photo,
  Sources,
  PhotoPair,
  Spec,
  Survey,
  Tally,
  Timeline,
  Wanted,
  Working,
  a: EntryLink,
  input: TaskBox,
  table: EntryTable,
  td: EntryCell,
  th: EntryHead,
};
