// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/venues/whatwasdone.h"

#include "core/work/records/codec.h"
#include "core/work/records/fields.h"

namespace steelyard {

ThingSaid thingSaid(const DeedDone& done)
{
    ThingSaid said = done.deed == Deed::LoanKept ? ThingSaid::Back : ThingSaid::Nothing;
    for (const journal::Held& held : done.entries) {
        const journal::Body& body = held.body;
        if (body.subject.kind != journal::RecordKind::KitItem)
            continue;
        if (done.deed == Deed::LoanKept && (body.fieldNumber == field::itemLentNumber || body.fieldNumber == field::itemBorrowedNumber) && onLoanIn(body.content))
            said = body.fieldNumber == field::itemLentNumber ? ThingSaid::Lent : ThingSaid::Borrowed;
        if (done.deed == Deed::Inspected && body.fieldNumber == field::itemInspectionNumber)
            if (const auto inspection = inspectionIn(body.content))
                said = inspection->fault ? ThingSaid::OutOfUse : ThingSaid::Fit;
    }
    return said;
}

}
