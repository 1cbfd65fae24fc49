// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.History
import Wetfront.ViewModels

// The firm's setting templates, and the plain ones to start from.
Item {
    id: page

    required property SessionViewModel session
    readonly property TemplatesViewModel templates: session.templates

    ConfirmPanel {
        id: confirm
    }
    ScrollColumn {
        anchors.fill: parent

        PlainWords {
            text: qsTr("Setting templates")
            kind: "heading"
            Layout.fillWidth: true
        }
        PlainWords {
            text: qsTr("Describe a controller once: which settings it has, what it calls them, and which steps it can hold. Advice then comes in its words and steps.")
            soft: true
            Layout.fillWidth: true
        }
        RemovalLine {
            id: removal
            removed: page.session.removed
            Layout.fillWidth: true
        }
        PlainWords {
            visible: page.templates.own.length === 0
            text: qsTr("None of your own yet. Make one from a plain one below, or add one from a file.")
            Layout.fillWidth: true
        }
        Repeater {
            model: page.templates.own
            delegate: TemplateCard {
                id: ownCard
                Layout.fillWidth: true
                ActionButton {
                    text: qsTr("Open")
                    pictogram: "pencil"
                    Accessible.name: qsTr("Open %1").arg(ownCard.title)
                    onClicked: page.session.openTemplate(ownCard.modelData.id)
                }
                ActionButton {
                    text: qsTr("Make one from this")
                    pictogram: "plus"
                    Accessible.name: qsTr("Make one from %1").arg(ownCard.title)
                    onClicked: page.session.makeTemplate(ownCard.modelData.id)
                }
                ActionButton {
                    text: qsTr("Remove")
                    pictogram: "bin"
                    Accessible.name: qsTr("Remove %1").arg(ownCard.title)
                    onClicked: removal.askToRemove(confirm, "template", ownCard.modelData.id)
                }
            }
        }
        ActionButton {
            text: qsTr("Add one from a file")
            pictogram: "sheet"
            onClicked: importing.setSource("qrc:/qt/qml/Wetfront/Preferences/TemplateImport.qml", {
                templates: page.templates
            })
        }
        PlainWords {
            text: qsTr("Plain ones, to start from")
            kind: "title"
            Layout.fillWidth: true
        }
        Repeater {
            model: page.templates.generic
            delegate: TemplateCard {
                id: genericCard
                mark: qsTr("generic, stays as it is")
                Layout.fillWidth: true
                ActionButton {
                    text: qsTr("Make one from this")
                    pictogram: "plus"
                    Accessible.name: qsTr("Make one from %1").arg(genericCard.title)
                    onClicked: page.session.makeTemplate(genericCard.modelData.id)
                }
            }
        }
    }
    Loader {
        id: importing
    }
}
