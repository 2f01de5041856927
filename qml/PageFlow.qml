// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Model
import Steelyard.Pages.Squad

/** The pages of an open vault: which place has which, and what the vault has to say before them. */
PageStack {
    id: root

    firstPages: [squadPages.squad, kitPages.setup]
    initialItem: kitPages.setup
    Component.onCompleted: root.showNews()
    // a page that is going has to be gone first
    onDepthChanged: soon.restart()

    SquadPages {
        id: squadPages
        stack: root
        work: deskWork
        onSizesRequested: athleteId => root.show(rightPages.sizes, {athleteId: athleteId})
        onReviewRequested: root.show(rightPages.review)
        onStrengthRequested: athleteId => root.show(strengthPages.strength, {athleteId: athleteId})
        onStatusRequested: athleteId => root.show(gatePages.dayStatus, {athleteId: athleteId})
        onClearancesRequested: athleteId => root.show(gatePages.clearances, {athleteId: athleteId}); onLimitsRequested: root.show(gatePages.limits)
        onHereRequested: athleteId => root.show(implementPages.here, {athleteId: athleteId})
    }
    GatePages {
        id: gatePages
        stack: root
    }
    RightPages {
        id: rightPages
        stack: root
    }
    KitPages {
        id: kitPages
        stack: root
        work: deskWork
        onMarksRequested: root.show(squadPages.marks); onAskRequested: root.show(askPages.whatToHang); onReleaseRequested: root.show(eccentricPages.eccentric)
        onMeasurementsRequested: itemId => root.show(rightPages.measurements, {itemId: itemId})
        onStrengthRequested: strengthPages.showLift(deskWork.athleteId, deskWork.lift); onRampRequested: root.show(strengthPages.ramp)
        onArrivalRequested: root.show(implementPages.arrival)
    }
    StrengthPages {
        id: strengthPages
        stack: root
    }
    AskPages {
        id: askPages
        stack: root
        work: deskWork
    }
    EccentricPages {
        id: eccentricPages
        stack: root
        work: deskWork
    }
    ImplementPages {
        id: implementPages
        stack: root
        work: deskWork
        onThingRequested: (itemId, kind) => root.show(kitPages.tools.form, kitPages.saidOf(kind, itemId))
        onMeasureRequested: (itemId, kind) => kitPages.measure(itemId, kind)
        onAnotherRequested: root.show(kitPages.what)
    }
    DeskWork {
        id: deskWork
        desk: TheDesk
        book: TheBook
    }
    Component {
        id: newsPage
        NewsPage { vault: TheVault; onBackRequested: root.readNews() }
    }
    Timer { id: soon; interval: 0; onTriggered: root.showNews() }
    Connections {
        target: TheVault
        function onNewsChanged() { root.showNews() }
    }

    /** What the vault has to say comes before a place's first page, and never over a form. */
    function showNews() {
        if (TheVault.news.length > 0 && root.depth === 1)
            root.show(newsPage)
    }
    function readNews() {
        TheVault.newsRead()
        root.back()
    }
}
