-- A trace asks of thousands of batches whether plants of them were given out of the programme, and whether
-- plants were found in them; few batches ever had either.
--
-- Locks: movement while its indexes are built. Undo by hand: drop both.

CREATE INDEX movement_of_plants_given_out ON movement (programme_id, batch_id) WHERE effect = 'givenOut';
CREATE INDEX movement_of_plants_found ON movement (programme_id, batch_id) WHERE effect = 'found';
