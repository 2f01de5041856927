// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Model
import Steelyard.Pages.Eccentric

/** The pages of a heavier way down, and where they lead. */
QtObject {
    id: root

    required property PageStack stack
    required property DeskWork work
    readonly property Component eccentric: Component {
        EccentricPage {
            id: page
            planner: ReleasePlanner { desk: TheDesk; work: root.work }
            form: ReleaseForm { desk: TheDesk; work: root.work; part: ReleaseForm.Set }
            view: SetupView { desk: TheDesk }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onAskedRequested: key => root.stack.key(page.planner, key)
            onNumberRequested: key => root.stack.key(page.form, key)
            onMeasuresRequested: root.stack.show(root.measures)
        }
    }
    readonly property Component measures: Component {
        HookMeasuresPage {
            planner: ReleasePlanner { desk: TheDesk; work: root.work }
            hook: ReleaseForm { desk: TheDesk; work: root.work; part: ReleaseForm.Hook }
            depth: ReleaseForm { desk: TheDesk; work: root.work; part: ReleaseForm.Depth }
            sides: ReleaseForm { desk: TheDesk; work: root.work; part: ReleaseForm.Places }
            onBackRequested: root.stack.back()
            onNumberRequested: (form, key) => root.stack.key(form, key)
        }
    }
}
