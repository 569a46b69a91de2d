-- A trace follows plants from batch to batch, forth and back: an entry by which they leave one, and the same entry by
-- which they come into the other. From a house it walks some forty thousand such steps, and finds each here without
-- reading the rows themselves.
--
-- Locks: movement while its indexes are built. Undo by hand: drop all four.

CREATE INDEX movement_out_of_a_batch ON movement (programme_id, batch_id) INCLUDE (day, entry_id)
  WHERE effect IN ('wentOn', 'splitOut', 'restuckOut', 'mixedOut', 'identifiedOut', 'givenAcross');
CREATE INDEX movement_out_by_an_entry ON movement (programme_id, entry_id) INCLUDE (day, batch_id)
  WHERE effect IN ('wentOn', 'splitOut', 'restuckOut', 'mixedOut', 'identifiedOut', 'givenAcross');
CREATE INDEX movement_into_a_batch ON movement (programme_id, batch_id) INCLUDE (day, entry_id)
  WHERE effect IN ('wentIn', 'splitIn', 'restuckIn', 'mixedIn', 'identifiedIn', 'givenIn');
CREATE INDEX movement_in_by_an_entry ON movement (programme_id, entry_id) INCLUDE (day, batch_id)
  WHERE effect IN ('wentIn', 'splitIn', 'restuckIn', 'mixedIn', 'identifiedIn', 'givenIn');
